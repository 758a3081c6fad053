package org.swathbook.control;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.swathbook.book.Biotype;
import org.swathbook.book.Resistance;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.DegreeDayMethod;
import org.swathbook.catalog.Emergence;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.TankTerms.AdjuvantNeed;
import org.swathbook.catalog.ThermalClock;
import org.swathbook.program.Adjuvant;

/** Equality that is written out by hand tells every component apart, as Java's own would. */
final class WrittenKeysTest {

  /** Makes the same value anew each time, so that nothing is equal by identity alone. */
  private record Key(Supplier<?> same, List<?> others) {}

  @TestFactory
  List<DynamicTest> keysAreEqualByEachOfTheirComponents() {
    ThermalClock clock = clock(10);
    return List.of(
            new Key(
                () -> clock(10),
                List.of(
                    clock(9),
                    new ThermalClock(DegreeDayMethod.SINGLE_SINE, 10, OptionalDouble.of(30)),
                    new ThermalClock(DegreeDayMethod.AVERAGE, 10, OptionalDouble.empty()))),
            new Key(
                () -> emergence(clock(10), 3, 100, 200, 300, 0.1, -0.5, "a"),
                List.of(
                    emergence(clock(9), 3, 100, 200, 300, 0.1, -0.5, "a"),
                    emergence(clock, 4, 100, 200, 300, 0.1, -0.5, "a"),
                    emergence(clock, 3, 101, 200, 300, 0.1, -0.5, "a"),
                    emergence(clock, 3, 100, 201, 300, 0.1, -0.5, "a"),
                    emergence(clock, 3, 100, 200, 301, 0.1, -0.5, "a"),
                    emergence(clock, 3, 100, 200, 300, 0.2, -0.5, "a"),
                    emergence(clock, 3, 100, 200, 300, 0.1, -0.6, "a"),
                    emergence(clock, 3, 100, 200, 300, 0.1, -0.5, "b"))),
            new Key(
                () -> new FoliarCurve(0.9, 10, 2),
                List.of(
                    new FoliarCurve(0.8, 10, 2),
                    new FoliarCurve(0.9, 11, 2),
                    new FoliarCurve(0.9, 10, 3))),
            new Key(
                () -> new Biotype(0.5, List.of(resists(9))),
                List.of(
                    new Biotype(0.4, List.of(resists(9))), new Biotype(0.5, List.of(resists(2))))),
            new Key(
                () -> resists(9),
                List.of(
                    resists(2),
                    new Resistance(
                        Optional.empty(),
                        Optional.of(new IngredientId("glyphosate")),
                        0.5,
                        "confirmed"),
                    new Resistance(Optional.of(Site.of(9)), Optional.empty(), 0.6, "confirmed"),
                    new Resistance(Optional.of(Site.of(9)), Optional.empty(), 0.5, "assumed"),
                    new Resistance(
                        Optional.of(Site.of(9)),
                        Optional.empty(),
                        0.5,
                        "confirmed",
                        Optional.of(Resistance.Kept.METABOLIC)))),
            new Key(
                () -> new Adjuvant("crop-oil", "1 % v/v"),
                List.of(new Adjuvant("crop-oil", "2 % v/v"), new Adjuvant("other", "1 % v/v"))),
            new Key(
                () -> new AdjuvantNeed(Set.of(AdjuvantKind.CROP_OIL), Optional.of("1"), true),
                List.of(
                    new AdjuvantNeed(Set.of(), Optional.of("1"), true),
                    new AdjuvantNeed(Set.of(AdjuvantKind.CROP_OIL), Optional.empty(), true),
                    new AdjuvantNeed(Set.of(AdjuvantKind.CROP_OIL), Optional.of("1"), false))),
            new Key(() -> new Source("a"), List.of(new Source("b"))))
        .stream()
        .map(
            key ->
                DynamicTest.dynamicTest(
                    key.same().get().getClass().getSimpleName(), () -> holdsFor(key)))
        .toList();
  }

  private static void holdsFor(Key key) {
    Object one = key.same().get();
    assertThat(one).isEqualTo(key.same().get()).hasSameHashCodeAs(key.same().get());
    assertThat(key.others()).isNotEmpty().allSatisfy(other -> assertThat(other).isNotEqualTo(one));
    assertThat(one).isNotEqualTo("something else").isNotEqualTo(null);
  }

  private static ThermalClock clock(double baseC) {
    return new ThermalClock(DegreeDayMethod.AVERAGE, baseC, OptionalDouble.of(30));
  }

  private static Emergence emergence(
      ThermalClock clock,
      int month,
      double at10,
      double at50,
      double at90,
      double tail,
      double waterBaseMPa,
      String source) {
    return new Emergence(
        clock,
        MonthDay.of(month, 1),
        at10,
        at50,
        at90,
        Optional.of(new Emergence.Tail(tail, 900)),
        OptionalDouble.of(waterBaseMPa),
        new Source(source));
  }

  private static Resistance resists(int site) {
    return new Resistance(Optional.of(Site.of(site)), Optional.empty(), 0.5, "confirmed");
  }
}
