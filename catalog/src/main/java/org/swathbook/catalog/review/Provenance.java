package org.swathbook.catalog.review;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.WrittenCatalog;
import org.swathbook.catalog.file.WrittenEntry;
import org.swathbook.catalog.file.WrittenGroup;
import org.swathbook.catalog.file.WrittenValue;

/** How many values of each kind rest on what. */
public final class Provenance {

  /** One kind of value with how many of it have a source of each kind; missing means none. */
  public record Row(String group, String what, Map<Source.Kind, Integer> counts) {

    public int count(Source.Kind kind) {
      return counts.getOrDefault(kind, 0);
    }
  }

  private static final List<String> GROUPS =
      List.of("ingredient", "use", "rating", "interaction", "product", "weed", "crop");

  private final Map<String, Row> rows = new LinkedHashMap<>();

  private Provenance() {}

  /** Rows by kind of entry, in the order in which the kinds of value are met. */
  public static List<Row> of(WrittenCatalog catalog) {
    Provenance p = new Provenance();
    for (EntryKind kind :
        List.of(EntryKind.INGREDIENT, EntryKind.PRODUCT, EntryKind.WEED, EntryKind.CROP)) {
      for (WrittenEntry e : catalog.of(kind)) {
        for (WrittenGroup g : e.groups()) {
          for (WrittenValue v : g.values()) {
            if (v.isFact()) {
              p.count(g.isUse() ? "use" : kind.word(), what(v.key()), v.source());
            }
          }
        }
      }
    }
    catalog
        .catalog()
        .responses()
        .forEach(r -> p.count("rating", r.timing().name().toLowerCase(Locale.ROOT), r.source()));
    catalog
        .catalog()
        .interactions()
        .forEach(i -> p.count("interaction", i.kind().name().toLowerCase(Locale.ROOT), i.source()));
    return p.rows.values().stream()
        .sorted(Comparator.comparing((Row r) -> GROUPS.indexOf(r.group())))
        .toList();
  }

  /** All crops, harvests and stages of one limit count together. */
  private static String what(String key) {
    for (String many :
        List.of("rotation", "competition", "intervals", "setback", "stages", "heights", "bbch")) {
      if (key.startsWith(many + ".")) {
        return switch (many) {
          case "rotation" -> "next-crop intervals";
          case "intervals" -> "days before harvest";
          case "setback" -> "distances from water";
          case "heights" -> "crop heights by stage";
          default -> many;
        };
      }
    }
    return KeyWords.of(key);
  }

  private void count(String group, String what, Source source) {
    rows.computeIfAbsent(
            group + "|" + what, k -> new Row(group, what, new EnumMap<>(Source.Kind.class)))
        .counts()
        .merge(source.kind(), 1, Integer::sum);
  }
}
