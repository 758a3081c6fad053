package org.swathbook.testing;

import java.util.List;
import java.util.Set;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.DayTerms;
import org.swathbook.catalog.Foliar;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TankTerms;
import org.swathbook.catalog.TankTerms.AdjuvantNeed;
import org.swathbook.catalog.Terms;

/** Terms of a label that asks nothing of tank, day or water. */
final class FixtureTerms {
  private static final Source SOURCE = new Source("default, test fixture");

  private FixtureTerms() {}

  static Terms of(Stated<Foliar> foliar) {
    return of(foliar, Stated.unknown("restricted use"));
  }

  private static Terms of(Stated<Foliar> foliar, Stated<Boolean> restrictedUse) {
    return of(foliar, restrictedUse, List.of(), Set.of());
  }

  static Terms withVolumes(Terms t, double least, double advised, double most) {
    return new Terms(
        t.foliar(),
        Stated.value(least, SOURCE),
        Stated.value(advised, SOURCE),
        Stated.value(most, SOURCE),
        t.waterPh(),
        t.fertilizerRefusedOverCrop(),
        t.reentryHours(),
        t.restrictedUse(),
        t.training(),
        t.tank(),
        t.day(),
        t.setbacks());
  }

  static Terms of(
      Stated<Foliar> foliar,
      Stated<Boolean> restrictedUse,
      List<AdjuvantNeed> needs,
      Set<AdjuvantKind> refused) {
    return new Terms(
        foliar,
        Stated.unknown("carrier volume"),
        Stated.none(SOURCE),
        Stated.none(SOURCE),
        Stated.none(SOURCE),
        Stated.none(SOURCE),
        Stated.value(12.0, SOURCE),
        restrictedUse,
        Stated.none(SOURCE),
        new TankTerms(
            needs.isEmpty() ? Stated.none(SOURCE) : Stated.value(needs, SOURCE),
            refused.isEmpty() ? Stated.none(SOURCE) : Stated.value(refused, SOURCE),
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
