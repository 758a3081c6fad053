package org.swathbook.plan;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.swathbook.measure.Money;
import org.swathbook.plan.draft.Walked;
import org.swathbook.plan.exact.ExactSearch;

/**
 * What the combining of passes proves of the programs that are shown. A rule of the whole program
 * may have blocked what was found, so that another is shown.
 *
 * @param exact whether the first one is proved to be the best
 * @param gap what a program made of the passes may net at most above it; empty when nothing was
 *     combined
 * @param proved names of the others that are proved
 */
record Proof(boolean exact, Optional<Money> gap, List<String> proved) {
  /** Of a difference in binary fractions of dollars, no cent more. */
  private static final double DUST_CENTS = 1e-6;

  Proof {
    proved = List.copyOf(proved);
  }

  /**
   * @param shown programs by their names, the first one first
   */
  static Proof of(Combining.Result combined, Map<String, Walked> shown) {
    Iterator<Walked> programs = shown.values().iterator();
    if (combined.first().isEmpty() || !programs.hasNext()) {
      return new Proof(false, Optional.empty(), List.of());
    }
    ExactSearch.Result search = combined.first().get();
    Walked first = programs.next();
    boolean exact = search.exact() && isFound(search, first);
    List<String> proved = new ArrayList<>();
    combined
        .beside()
        .forEach(
            (name, r) -> {
              Walked w = shown.get(name);
              if (w != null && !w.equals(first) && r.exact() && isFound(r, w)) {
                proved.add(name);
              }
            });
    return new Proof(exact, Optional.of(exact ? Money.ZERO : gap(search, first)), proved);
  }

  private static boolean isFound(ExactSearch.Result search, Walked shown) {
    return search.best().filter(b -> b.draft().equals(shown.draft())).isPresent();
  }

  private static Money gap(ExactSearch.Result search, Walked first) {
    double seen = search.best().map(b -> b.net().dollars()).orElse(Double.NEGATIVE_INFINITY);
    return above(Math.max(search.mostLeft(), seen), first);
  }

  /**
   * By how much others may net more than a program, rounded up to cents.
   *
   * @param most what they net at most, dollars on an acre
   */
  static Money above(double most, Walked first) {
    double above = most - first.net().dollars();
    return above > 0 ? new Money((long) Math.ceil(100 * above - DUST_CENTS)) : Money.ZERO;
  }
}
