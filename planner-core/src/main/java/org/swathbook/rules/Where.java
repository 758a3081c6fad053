package org.swathbook.rules;

import java.util.Comparator;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Use;

/** Where a missing fact is to be looked up and written down. */
public final class Where {
  private Where() {}

  /** A key of a use in the ingredient's file, {@code uses.soybean.pre.soilPh}. */
  public static String use(Ingredient ingredient, Use use, String key, String labelSection) {
    String crop = use.crop().map(c -> c.value()).orElse("any");
    String position =
        use.positions().stream()
            .min(Comparator.naturalOrder())
            .map(Position::spelling)
            .orElse("pre");
    return ingredient(ingredient, "uses." + crop + "." + position + "." + key, labelSection);
  }

  public static String ingredient(Ingredient ingredient, String key, String labelSection) {
    return "label, "
        + labelSection
        + "; then "
        + key
        + " in catalog/ingredients/"
        + ingredient.id()
        + ".yaml";
  }

  /** A column of the book's list of fields. */
  public static String field(String column) {
    return "column " + column + " of fields.csv";
  }
}
