package org.swathbook.catalog.file;

import java.util.List;
import org.swathbook.measure.MeasureException;
import org.swathbook.source.Nearest;
import org.swathbook.source.TextParser;

/**
 * Two-letter codes of the international coding system for pesticide formulations (those that are
 * sprayed, from memory).
 */
final class Formulations {
  static final List<String> CODES =
      List.of(
          "CS", "DC", "DF", "EC", "EO", "ES", "EW", "GR", "ME", "OD", "OF", "SC", "SE", "SG", "SL",
          "SP", "SO", "ST", "TB", "WG", "WP", "WT", "ZC", "ZE", "ZW");

  static final TextParser<String> CODE =
      text -> {
        String code = text.strip();
        if (!CODES.contains(code)) {
          throw new MeasureException(
              "'" + text + "' is no formulation code; " + Nearest.hint(code, CODES));
        }
        return code;
      };

  private Formulations() {}

  static boolean isCode(String text) {
    return CODES.contains(text.strip());
  }
}
