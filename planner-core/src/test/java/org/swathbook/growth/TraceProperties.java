package org.swathbook.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.swathbook.book.Book;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Field;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.Fixtures;

/** Laws of the trace over crops, soils, dates, stations and densities. */
class TraceProperties {
  private static final String[] CROPS = {"corn", "soybean", "grain-sorghum"};

  private record Case(Book book, Field field, double density) {
    TraceSet trace() {
      return TraceBuilder.build(book, field);
    }
  }

  private static Case make(
      int crop,
      int plantedAfterApril,
      boolean tilled,
      boolean dry,
      SoilTexture soil,
      double density) {
    FieldBuilder b =
        FieldBuilder.of(
                "X", CROPS[crop], LocalDate.of(2027, 4, 10).plusDays(plantedAfterApril).toString())
            .station(dry ? "dry-butte" : "sedge-fork", 40.5)
            .yieldGoal(density > 50 ? 80 : 120)
            .soil(soil, 2, 6.5);
    Field field = (tilled ? b.tilled() : b).build();
    Book book =
        Fixtures.bookWith(
            field,
            Fixtures.weed("X", "AMAPA", density, DriverKind.YES, 0),
            Fixtures.weed("X", "KCHSC", density / 3, DriverKind.NO, 0));
    return new Case(book, field, density);
  }

  @Property(tries = 40)
  void cohortsAddUpToTheDensityAndKeepTheirDays(
      @ForAll @IntRange(min = 0, max = 2) int crop,
      @ForAll @IntRange(min = 0, max = 80) int planted,
      @ForAll boolean tilled,
      @ForAll boolean dry,
      @ForAll SoilTexture soil,
      @ForAll @DoubleRange(min = 0.01, max = 400) double density) {
    Case c = make(crop, planted, tilled, dry, soil, density);
    for (SeasonTrace trace : c.trace().years()) {
      assertThat(trace.cohorts(0).totalPerM2()).isCloseTo(density, within(1e-9 * density));
      assertThat(trace.cohorts(1).totalPerM2()).isCloseTo(density / 3, within(1e-9 * density));
      for (int w = 0; w < 2; w++) {
        CohortSet set = trace.cohorts(w);
        for (int i = 0; i < set.count(); i++) {
          assertThat(set.perM2(i)).isPositive();
          assertThat(set.tillageSurvival(i)).isBetween(0.0, 1.0);
          assertThat(set.heightCm(i, set.emergedOn(i))).isZero();
          assertThat(i == 0 || set.emergedOn(i) > set.emergedOn(i - 1)).isTrue();
        }
      }
    }
  }

  @Property(tries = 40)
  void timeOnlyGoesForward(
      @ForAll @IntRange(min = 0, max = 2) int crop,
      @ForAll @IntRange(min = 0, max = 80) int planted,
      @ForAll boolean dry,
      @ForAll SoilTexture soil) {
    for (SeasonTrace trace : make(crop, planted, false, dry, soil, 10).trace().years()) {
      CohortSet first = trace.cohorts(0);
      for (int d = 1; d < trace.days(); d++) {
        assertThat(trace.stage(d)).isGreaterThanOrEqualTo(trace.stage(d - 1));
        assertThat(trace.soilAge(d - 1, d)).isNotNegative();
        assertThat(trace.cover(d)).isBetween(0.0, 1.0);
        assertThat(first.heightCm(0, d)).isGreaterThanOrEqualTo(first.heightCm(0, d - 1));
        if (d <= trace.harvestDay()) {
          assertThat(trace.cropHeightCm(d)).isGreaterThanOrEqualTo(trace.cropHeightCm(d - 1));
          assertThat(trace.cover(d)).isGreaterThanOrEqualTo(trace.cover(d - 1));
        }
      }
      for (int c = 1; c < first.count(); c++) {
        int day = Math.min(trace.days() - 1, first.emergedOn(c) + 30);
        assertThat(first.heightCm(c, day)).isLessThanOrEqualTo(first.heightCm(c - 1, day));
      }
    }
  }

  /** The same book gives the same bits, whatever was computed before. */
  @Property(tries = 20)
  void theTraceIsDeterministic(
      @ForAll @IntRange(min = 0, max = 2) int crop,
      @ForAll @IntRange(min = 0, max = 80) int planted,
      @ForAll boolean tilled,
      @ForAll SoilTexture soil) {
    Case c = make(crop, planted, tilled, true, soil, 7);
    TraceSet one = c.trace();
    TraceSet two = c.trace();
    for (int y = 0; y < one.years().size(); y++) {
      SeasonTrace a = one.years().get(y);
      SeasonTrace b = two.years().get(y);
      for (int d = 0; d < a.days(); d++) {
        assertThat(a.stage(d)).isEqualTo(b.stage(d));
        assertThat(a.soilAge(0, d)).isEqualTo(b.soilAge(0, d));
        assertThat(a.sprayable(d)).isEqualTo(b.sprayable(d));
      }
      CohortSet ca = a.cohorts(0);
      CohortSet cb = b.cohorts(0);
      assertThat(ca.count()).isEqualTo(cb.count());
      for (int i = 0; i < ca.count(); i++) {
        assertThat(ca.perM2(i)).isEqualTo(cb.perM2(i));
        assertThat(ca.heightCm(i, a.days() - 1)).isEqualTo(cb.heightCm(i, a.days() - 1));
      }
    }
  }

  @Property(tries = 60)
  void noShareOfTheStandingPlantsIsTallerThanALargerOne(
      @ForAll @IntRange(min = 150, max = 420) int day,
      @ForAll @DoubleRange(min = 0.01, max = 1) double low,
      @ForAll @DoubleRange(min = 0.01, max = 1) double high) {
    SeasonTrace trace =
        TraceBuilder.build(Fixtures.book(), Fixtures.field("QH-3")).years().get(day % 10);
    double small = Math.min(low, high);
    double large = Math.max(low, high);

    assertThat(StandingSize.percentileCm(trace, 0, day, small).orElse(0))
        .isLessThanOrEqualTo(StandingSize.percentileCm(trace, 0, day, large).orElse(0));
  }
}
