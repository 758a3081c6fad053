package org.swathbook.testing;

import org.swathbook.catalog.DayTerms;
import org.swathbook.catalog.Foliar;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TankTerms;
import org.swathbook.catalog.Terms;

/** Terms of a label that asks nothing of tank, day or water. */
final class FixtureTerms {
  private static final Source SOURCE = new Source("default, test fixture");

  private FixtureTerms() {}

  static Terms of(Stated<Foliar> foliar) {
    return of(foliar, Stated.unknown("restricted use"));
  }

  static Terms restricted(Stated<Foliar> foliar) {
    return of(foliar, Stated.value(true, SOURCE));
  }

  private static Terms of(Stated<Foliar> foliar, Stated<Boolean> restrictedUse) {
    return new Terms(
        foliar,
        Stated.unknown("carrier volume"),
        Stated.none(SOURCE),
        Stated.value(12.0, SOURCE),
        restrictedUse,
        new TankTerms(
            Stated.none(SOURCE),
            Stated.none(SOURCE),
            Stated.none(SOURCE),
            Stated.none(SOURCE),
            Stated.none(SOURCE),
            Stated.none(SOURCE),
            Stated.none(SOURCE),
            Stated.none(SOURCE)),
        new DayTerms(
            Stated.none(SOURCE),
            Stated.none(SOURCE),
            Stated.none(SOURCE),
            Stated.none(SOURCE),
            Stated.none(SOURCE),
            Stated.none(SOURCE)),
        Stated.none(SOURCE));
  }
}
