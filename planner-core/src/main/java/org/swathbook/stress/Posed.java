package org.swathbook.stress;

import java.util.List;
import java.util.Optional;

/**
 * A case put to one program.
 *
 * @param title in a few words, with the pass it hits
 * @param variants the situations that it makes, at least one unless it cannot be put
 * @param whyNot why it cannot be put; the variants are then empty
 * @param notes what to know of how it was put, one sentence each
 */
record Posed(String title, List<Stressed> variants, Optional<String> whyNot, List<String> notes) {

  Posed {
    variants = List.copyOf(variants);
    notes = List.copyOf(notes);
    if (variants.isEmpty() == whyNot.isEmpty()) {
      throw new IllegalArgumentException("a case is put, or it says why not: " + title);
    }
  }

  static Posed not(String title, String why) {
    return new Posed(title, List.of(), Optional.of(why), List.of());
  }

  static Posed one(String title, Stressed variant, List<String> notes) {
    return of(title, List.of(variant), notes);
  }

  /** Not put where the passes of a variant do not find their days any more. */
  static Posed of(String title, List<Stressed> variants, List<String> notes) {
    return variants.stream()
        .flatMap(v -> PassPlaces.missing(v.book(), v.traces(), v.program()).stream())
        .findFirst()
        .map(a -> not(title, "'" + a + "' then does not come in most weather years"))
        .orElseGet(() -> new Posed(title, variants, Optional.empty(), notes));
  }
}
