package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.WrittenEntry;
import org.swathbook.catalog.file.WrittenGroup;
import org.swathbook.catalog.file.WrittenValue;
import org.swathbook.catalog.review.Ratings;
import org.swathbook.catalog.review.Unstated;
import org.swathbook.catalog.review.WhereUsed;
import org.swathbook.cli.report.Cautions;

/** The result of {@code catalog show}. */
public final class EntryJson {
  private EntryJson() {}

  /** Values stand in the order of the file, each with its source. */
  public static String of(Catalog catalog, WrittenEntry entry) {
    ObjectNode root = Json.NODES.objectNode();
    root.put("format", "swathbook.catalog-show/1");
    root.put("kind", entry.kind().word());
    root.put("id", entry.id());
    root.put("name", entry.text("name"));
    root.put("starter", entry.starter());
    root.put("reviewed", entry.text("reviewed"));
    ArrayNode parts = root.putArray("parts");
    for (WrittenGroup g : entry.groups()) {
      ObjectNode part = parts.addObject();
      part.put("use", g.name());
      ArrayNode values = part.putArray("values");
      for (WrittenValue v : g.values()) {
        ObjectNode value = values.addObject();
        value.put("key", v.key());
        value.put("text", v.text());
        value.put("source", v.isFact() ? v.source().text() : "");
      }
    }
    ArrayNode open = root.putArray("notStated");
    if (entry.kind() == EntryKind.INGREDIENT) {
      for (Unstated u : Unstated.of(entry)) {
        ObjectNode node = open.addObject();
        node.put("key", u.key());
        node.set("uses", Json.texts(u.uses()));
      }
    }
    ArrayNode ratings = root.putArray("ratings");
    for (Response r : Ratings.of(catalog, entry)) {
      ObjectNode node = ratings.addObject();
      node.put("ingredient", r.ingredient().value());
      node.put("weed", r.weed().value());
      node.put("timing", r.timing().name().toLowerCase(Locale.ROOT));
      node.set("controlPct", Json.percent(r.emaxPct()));
      node.set("lowPct", Json.percent(r.lowPct()));
      node.set("highPct", Json.percent(r.highPct()));
      node.set(
          "ratedAtIn",
          r.controlHeightCm().isPresent()
              ? Json.inches(r.controlHeightCm().getAsDouble())
              : Json.NODES.nullNode());
      node.put("source", r.source().text());
    }
    root.set("namedBy", Json.texts(WhereUsed.of(catalog, entry)));
    root.set("cautions", Json.texts(Cautions.ALL));
    return Json.write(root);
  }
}
