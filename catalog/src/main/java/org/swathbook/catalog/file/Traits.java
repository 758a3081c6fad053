package org.swathbook.catalog.file;

import org.swathbook.catalog.Slug;
import org.swathbook.catalog.Trait;
import org.swathbook.measure.MeasureException;
import org.swathbook.source.Nearest;
import org.swathbook.source.TextParser;

/** The traits and seed treatments that labels speak of. */
final class Traits {
  /** A trait or seed treatment that labels speak of. */
  static final TextParser<Trait> PARSER =
      text -> {
        // Held against the list before it becomes an id: of '???' no letter is left for one.
        String name = Slug.of(text);
        if (!Trait.NAMES.contains(name)) {
          throw new MeasureException(
              "'" + text + "' is no trait; " + Nearest.hint(name, Trait.NAMES));
        }
        return new Trait(name);
      };

  private Traits() {}
}
