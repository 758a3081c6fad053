package org.swathbook.control;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.swathbook.catalog.Residual;
import org.swathbook.measure.Basis;
import org.swathbook.measure.Rate;

class CurveProperties {

  @Property(tries = 200)
  void moreDoseNeverControlsLessThroughLeaves(
      @ForAll @DoubleRange(min = 0, max = 1) double emax,
      @ForAll @DoubleRange(min = 0, max = 2) double dose,
      @ForAll @DoubleRange(min = 0, max = 1) double more,
      @ForAll @DoubleRange(min = 0, max = 150) double cm,
      @ForAll boolean contact) {
    FoliarCurve c = curve(emax, contact);
    assertThat(c.control(dose + more, cm)).isBetween(c.control(dose, cm), 1.0);
  }

  @Property(tries = 200)
  void tallerIsNeverControlledBetter(
      @ForAll @DoubleRange(min = 0, max = 1) double emax,
      @ForAll @DoubleRange(min = 0, max = 1) double dose,
      @ForAll boolean contact) {
    double[] table = curve(emax, contact).table(dose);
    for (int k = 1; k < table.length; k++) {
      assertThat(table[k]).isBetween(0.0, table[k - 1]);
    }
  }

  private static FoliarCurve curve(double emax, boolean contact) {
    return new FoliarCurve(
        emax, 4 * 2.54, contact ? FoliarCurve.CONTACT_GAMMA : FoliarCurve.SYSTEMIC_GAMMA);
  }

  @Property(tries = 200)
  void layersOnlyFadeAndMoreDoseLastsNoShorter(
      @ForAll @IntRange(min = 5, max = 40) int lowDays,
      @ForAll @IntRange(min = 0, max = 40) int further,
      @ForAll @DoubleRange(min = 0, max = 4) double lb,
      @ForAll @DoubleRange(min = 0, max = 2) double more,
      @ForAll @DoubleRange(min = 0, max = 150) double age,
      @ForAll @DoubleRange(min = 0, max = 100) double emax) {
    Residual r =
        new Residual(
            Rate.lbPerAcre(0.5, Basis.AI),
            lowDays,
            Rate.lbPerAcre(1.5, Basis.AI),
            lowDays + further,
            12);
    double kg = Rate.lbPerAcre(lb, Basis.AI).kgPerHa();
    double length = FadeCurve.lengthDays(r, kg);
    assertThat(FadeCurve.lengthDays(r, kg + more)).isGreaterThanOrEqualTo(length);
    assertThat(FadeCurve.relative(age + 1, length)).isBetween(0.0, FadeCurve.relative(age, length));
    assertThat(FadeCurve.fresh(emax, r)).isBetween(0.0, FadeCurve.MOST);
  }

  @Property(tries = 200)
  void everyPartnerHelpsAndNoneReachesWhatAllMiss(
      @ForAll @DoubleRange(min = 0, max = 0.2) double missed,
      @ForAll @DoubleRange(min = 0, max = 1) double a,
      @ForAll @DoubleRange(min = 0, max = 1) double b) {
    double alone = JointAction.withMisses(missed, JointAction.survival(a));
    double both = JointAction.withMisses(missed, JointAction.survival(a, b));
    assertThat(both).isBetween(missed, alone);
  }
}
