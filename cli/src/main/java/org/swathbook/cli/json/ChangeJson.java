package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.swathbook.cli.report.ChangeWords;
import org.swathbook.plan.change.SingleChange;
import org.swathbook.program.Dose;

/** One change to a program: the same keys wherever one is advised. */
final class ChangeJson {
  private ChangeJson() {}

  static void into(ObjectNode node, SingleChange change) {
    node.put("words", ChangeWords.of(change, Object::toString));
    node.put("kind", change.kind().word());
    node.put("pass", change.pass().toString());
    node.put("movedTo", change.movedTo().map(Object::toString).orElse(null));
    ArrayNode in = node.putArray("products");
    change.in().forEach(d -> dose(in.addObject(), d));
    node.put("instead", change.out().map(d -> d.product().id().value()).orElse(null));
  }

  private static void dose(ObjectNode node, Dose d) {
    node.put("product", d.product().id().value());
    node.set("rate", Json.fixed(d.rate().amount(), 4));
    node.put("unit", d.rate().unitText());
  }
}
