package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.WrittenCatalog;
import org.swathbook.catalog.review.Provenance;

/** The result of {@code catalog list}. */
public final class CatalogListJson {
  private CatalogListJson() {}

  /**
   * What there is; a kind that was not asked for is left out.
   *
   * @param only the kind to list; null for all
   */
  public static String of(WrittenCatalog written, @Nullable EntryKind only) {
    Catalog c = written.catalog();
    ObjectNode root = Json.NODES.objectNode();
    root.put("format", "swathbook.catalog-list/1");
    if (only == null || only == EntryKind.INGREDIENT) {
      ArrayNode list = root.putArray("ingredients");
      c.ingredients()
          .forEach(
              i -> {
                ObjectNode node = list.addObject();
                node.put("id", i.id().value());
                node.put("name", i.name());
                node.put("site", i.site().number());
                ArrayNode crops = node.putArray("crops");
                i.uses().stream()
                    .filter(u -> !u.refused())
                    .flatMap(u -> u.crop().stream())
                    .distinct()
                    .forEach(x -> crops.add(x.value()));
              });
    }
    if (only == null || only == EntryKind.WEED) {
      ArrayNode list = root.putArray("weeds");
      c.weeds()
          .forEach(
              w -> {
                ObjectNode node = list.addObject();
                node.put("id", w.id().value());
                node.put("name", w.name());
              });
    }
    if (only == null || only == EntryKind.CROP) {
      ArrayNode list = root.putArray("crops");
      c.crops()
          .forEach(
              x -> {
                ObjectNode node = list.addObject();
                node.put("id", x.id().value());
                node.put("name", x.name());
              });
    }
    if (only == null || only == EntryKind.PRODUCT) {
      ArrayNode list = root.putArray("products");
      c.products()
          .forEach(
              p -> {
                ObjectNode node = list.addObject();
                node.put("id", p.id().value());
                node.put("name", p.name());
                ArrayNode contents = node.putArray("ingredients");
                p.contents().forEach(x -> contents.add(x.ingredient().value()));
              });
    }
    return Json.write(root);
  }

  /** How many values of each kind rest on what. */
  public static String sources(List<Provenance.Row> rows) {
    ObjectNode root = Json.NODES.objectNode();
    root.put("format", "swathbook.catalog-sources/1");
    ArrayNode list = root.putArray("values");
    for (Provenance.Row r : rows) {
      ObjectNode node = list.addObject();
      node.put("of", r.group());
      node.put("what", r.what());
      for (Source.Kind k : Source.Kind.values()) {
        node.put(key(k), r.count(k));
      }
    }
    return Json.write(root);
  }

  private static String key(Source.Kind k) {
    return k == Source.Kind.NOT_GIVEN ? "notGiven" : k.name().toLowerCase(Locale.ROOT);
  }
}
