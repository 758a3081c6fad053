package org.swathbook.catalog.file;

import java.util.List;
import org.swathbook.catalog.Trait;
import org.swathbook.measure.MeasureException;
import org.swathbook.source.Nearest;
import org.swathbook.source.TextParser;

/** The traits and seed treatments that labels speak of. */
final class Traits {
  static final List<String> NAMES =
      List.of(
          "2-4-d",
          "accase-tolerant",
          "als-tolerant",
          "dicamba",
          "fop-tolerant",
          "glufosinate",
          "glyphosate",
          "imidazolinone",
          "isoxaflutole",
          "mesotrione",
          "safened-seed");

  /** A trait or seed treatment that labels speak of. */
  static final TextParser<Trait> PARSER =
      text -> {
        Trait trait = Trait.of(text);
        if (!NAMES.contains(trait.value())) {
          throw new MeasureException(
              "'" + text + "' is no trait; " + Nearest.hint(trait.value(), NAMES));
        }
        return trait;
      };

  private Traits() {}
}
