package org.swathbook.trials;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;

/**
 * Finds the names of actives in running text and puts marks in their place, so that the commas and
 * hyphens of "2,4-D" and "S-metolachlor" separate nothing.
 */
final class ActiveNames {
  private static final Pattern MARK = Pattern.compile("«(\\d+)»");

  private final List<IngredientId> ids = new ArrayList<>();
  private final Map<String, Integer> places = new LinkedHashMap<>();
  private final Pattern names;

  ActiveNames(Catalog catalog) {
    for (Ingredient i : catalog.ingredients()) {
      put(i.name(), i.id());
      i.aliases().forEach(a -> put(a, i.id()));
    }
    for (Ingredient i : catalog.ingredients()) {
      // dimethenamid-P is printed as dimethenamid, chlorimuron-ethyl as chlorimuron
      int hyphen = i.name().lastIndexOf('-');
      if (hyphen > 3 && !i.name().startsWith("2,4-D")) {
        put(i.name().substring(0, hyphen), i.id());
      }
    }
    // What preplant trials print without its form is the ester: the choline salt needs the trait.
    catalog.findIngredient("2,4-D ester").ifPresent(i -> put("2,4-D", i.id()));
    String any =
        String.join(
            "|",
            places.keySet().stream()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .map(Pattern::quote)
                .toList());
    this.names = Pattern.compile("(?<![\\w-])(?:" + any + ")(?![\\w])", Pattern.CASE_INSENSITIVE);
  }

  private void put(String name, IngredientId id) {
    String key = name.toLowerCase(Locale.ROOT);
    if (!places.containsKey(key)) {
      places.put(key, ids.size());
      ids.add(id);
    }
  }

  String marked(String text) {
    return names
        .matcher(text)
        .replaceAll(m -> "«" + places.get(m.group().toLowerCase(Locale.ROOT)) + "»");
  }

  boolean isIn(String marked) {
    return MARK.matcher(marked).find();
  }

  /** Actives of a marked text in their order. */
  List<IngredientId> of(String marked) {
    List<IngredientId> out = new ArrayList<>();
    Matcher m = MARK.matcher(marked);
    while (m.find()) {
      out.add(ids.get(Integer.parseInt(m.group(1))));
    }
    return out;
  }

  static String withoutMarks(String marked) {
    return MARK.matcher(marked).replaceAll(" ");
  }
}
