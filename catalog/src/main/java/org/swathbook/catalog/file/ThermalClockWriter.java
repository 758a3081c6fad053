package org.swathbook.catalog.file;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.swathbook.catalog.DegreeDayMethod;
import org.swathbook.catalog.ThermalClock;
import org.swathbook.measure.Unit;
import org.swathbook.source.MapWriter;

/**
 * Writes how degree-days are counted, and degree-days. They are kept in °C; where all of them are
 * short in °F, somebody wrote them so, and they are written in °F again.
 */
final class ThermalClockWriter {
  private final ThermalClock clock;
  private final Unit unit;

  /**
   * A writer for a clock and all sums that go with it.
   *
   * @param sums °C-days that will be written
   */
  ThermalClockWriter(ThermalClock clock, List<Double> sums) {
    this.clock = clock;
    this.unit = unit(clock, sums);
  }

  private static Unit unit(ThermalClock clock, List<Double> sums) {
    List<Double> temperatures = new ArrayList<>(List.of(clock.baseC()));
    clock.ceilingC().ifPresent(temperatures::add);
    boolean handy =
        temperatures.stream().allMatch(c -> handy(Unit.FAHRENHEIT::toSi, fahrenheit(c), c))
            && sums.stream()
                .allMatch(s -> handy(Unit.FAHRENHEIT::spanToSi, Unit.FAHRENHEIT.spanFromSi(s), s));
    // The spelling of a clamped clock has no minus sign.
    boolean below = clock.method() == DegreeDayMethod.CLAMPED && clock.baseC() < 0;
    return handy || below ? Unit.FAHRENHEIT : Unit.CELSIUS;
  }

  private static boolean handy(DoubleUnaryOperator reading, double guess, double wanted) {
    return ExactText.handy(reading, guess, wanted).isPresent();
  }

  private static double fahrenheit(double celsius) {
    return Unit.FAHRENHEIT.fromSi(celsius);
  }

  /** The keys {@code method}, {@code base} and {@code ceiling}. */
  MapWriter keys() {
    String base = temperature(clock.baseC());
    OptionalDouble ceiling = clock.ceilingC();
    if (clock.method() == DegreeDayMethod.CLAMPED) {
      return new MapWriter()
          .put("method", temperature(ceiling.orElseThrow()) + "/" + base + " " + unit.symbol());
    }
    boolean sine = clock.method() == DegreeDayMethod.SINGLE_SINE;
    MapWriter map =
        new MapWriter()
            .put("method", sine ? "single-sine" : "average")
            .put("base", base + " " + unit.symbol());
    ceiling.ifPresent(c -> map.put("ceiling", temperature(c) + " " + unit.symbol()));
    return map;
  }

  private String temperature(double celsius) {
    return unit == Unit.CELSIUS
        ? ExactText.number(celsius)
        : exact(Unit.FAHRENHEIT::toSi, fahrenheit(celsius), celsius);
  }

  /** Degree-days in the unit of the clock. */
  String sum(double celsiusDays) {
    return unit == Unit.CELSIUS
        ? ExactText.number(celsiusDays)
        : exact(Unit.FAHRENHEIT::spanToSi, Unit.FAHRENHEIT.spanFromSi(celsiusDays), celsiusDays);
  }

  private static String exact(DoubleUnaryOperator reading, double guess, double wanted) {
    return ExactText.number(ExactText.inverse(reading, guess, wanted).orElse(guess));
  }
}
