package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.swathbook.book.Field;
import org.swathbook.catalog.Trait;
import org.swathbook.growth.TraceBuilder;

/** Which field a result is about. */
final class FieldJson {
  private FieldJson() {}

  static void into(ObjectNode node, Field field) {
    node.put("field", field.id().value());
    node.put("name", field.name());
    node.put("grower", field.grower());
    node.set("acres", Json.fixed(field.acres(), 1));
    node.put("crop", field.crop().value());
    if (field.traits().isPresent()) {
      node.set("traits", Json.texts(field.traits().get().stream().map(Trait::value).toList()));
    } else {
      node.putNull("traits");
    }
    node.put("plantDate", field.plantDate().toString());
    node.set("assumed", Json.texts(TraceBuilder.assumed(field)));
  }
}
