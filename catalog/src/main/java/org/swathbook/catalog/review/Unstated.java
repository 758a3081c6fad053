package org.swathbook.catalog.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.swathbook.catalog.file.WrittenEntry;
import org.swathbook.catalog.file.WrittenGroup;

/**
 * A limit that an ingredient does not state.
 *
 * @param key the key that is missing
 * @param uses the uses that lack it; empty when it is missing for the ingredient as a whole
 */
public record Unstated(String key, List<String> uses) {

  /** What a label may limit in any spraying. */
  private static final List<String> OF_ALL =
      List.of("soil", "foliar", "carrier", "reentry", "restrictedUse", "setback");

  private static final List<String> OF_TANK_AND_DAY =
      List.of(
          "tank.adjuvantNeeded",
          "tank.adjuvantRefused",
          "tank.partners",
          "tank.droplets",
          "tank.insecticides",
          "tank.cleanOut",
          "day.wind",
          "day.inversion");

  /** What a label may limit in a use. */
  private static final List<String> OF_USE =
      List.of("timing", "cropHeight", "trait", "rate", "soilPh", "cap", "applications", "repeat");

  public Unstated {
    uses = List.copyOf(uses);
  }

  /** The limits that an ingredient's file does not state, in a fixed order. */
  public static List<Unstated> of(WrittenEntry ingredient) {
    WrittenGroup whole = ingredient.groups().get(0);
    List<WrittenGroup> uses =
        ingredient.groups().stream().filter(g -> g.isUse() && !g.has("refusedUse")).toList();
    List<Unstated> out = new ArrayList<>();
    OF_ALL.stream().filter(k -> !whole.has(k)).forEach(k -> add(out, k, uses));
    OF_TANK_AND_DAY.stream().filter(k -> !whole.has(k)).forEach(k -> add(out, k, uses));
    Map<String, List<String>> byKey = new TreeMap<>();
    for (WrittenGroup use : uses) {
      for (String key : OF_USE) {
        // A use over a standing crop needs no days before planting, and so on: only what may bind.
        if (!use.has(key) && !(key.equals("cropHeight") && !use.name().contains("post"))) {
          byKey.computeIfAbsent(key, k -> new ArrayList<>()).add(use.name());
        }
      }
      if (use.name().matches(".*(burndown|preplant).*") && !use.has("plantingInterval")) {
        byKey.computeIfAbsent("plantingInterval", k -> new ArrayList<>()).add(use.name());
      }
    }
    byKey.forEach((key, names) -> out.add(new Unstated(key, names)));
    return out;
  }

  /** A key missing at the top may still be stated by every use. */
  private static void add(List<Unstated> out, String key, List<WrittenGroup> uses) {
    List<String> without = uses.stream().filter(u -> !u.has(key)).map(WrittenGroup::name).toList();
    if (uses.isEmpty() || without.size() == uses.size()) {
      out.add(new Unstated(key, List.of()));
    } else if (!without.isEmpty()) {
      out.add(new Unstated(key, without));
    }
  }

  /** {@code most in a period (2 uses)}. */
  public String text() {
    String words = KeyWords.of(key);
    return switch (uses.size()) {
      case 0 -> words;
      case 1 -> words + " (1 use)";
      default -> words + " (" + uses.size() + " uses)";
    };
  }
}
