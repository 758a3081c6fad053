package org.swathbook.book;

import java.util.Locale;
import java.util.Set;

/**
 * Classes of insecticides as labels of herbicides speak of them. The catalog holds no insecticides;
 * a record or a job names a class, or an organophosphate by its ISO common name.
 */
public final class InsecticideClass {
  public static final String ORGANOPHOSPHATE = "organophosphate";

  /** What somebody writes who used none. */
  public static final String NONE = "none";

  /** Organophosphates (IRAC group 1B) of field crops; from memory, and not all of them. */
  private static final Set<String> ORGANOPHOSPHATES =
      Set.of(
          "acephate",
          "chlorethoxyfos",
          "chlorpyrifos",
          "diazinon",
          "dicrotophos",
          "dimethoate",
          "ethoprophos",
          "fonofos",
          "malathion",
          "parathion-methyl",
          "phorate",
          "phosmet",
          "profenofos",
          "tebupirimfos",
          "terbufos");

  private InsecticideClass() {}

  /** The class that a word stands for; a word that is no known name is taken as a class itself. */
  public static String of(String written) {
    String word = written.strip().toLowerCase(Locale.ROOT);
    if (word.endsWith("s") && ORGANOPHOSPHATE.equals(word.substring(0, word.length() - 1))) {
      return ORGANOPHOSPHATE;
    }
    return ORGANOPHOSPHATES.contains(word) ? ORGANOPHOSPHATE : word;
  }
}
