package org.swathbook.catalog.file;

import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.swathbook.catalog.DegreeDayMethod;
import org.swathbook.catalog.ThermalClock;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
import org.swathbook.source.MapReader;
import org.swathbook.source.Problems;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/**
 * Reads how degree-days are counted. Files may count in °F: a base turns into °C, and 1 °F-day is
 * 5/9 °C-day.
 *
 * @param clock in °C
 * @param unit in which the file writes temperatures and degree-days
 */
record ThermalClocks(ThermalClock clock, Unit unit) {

  /** Stands in where the keys have a problem. */
  static final ThermalClocks UNREAD =
      new ThermalClocks(
          new ThermalClock(DegreeDayMethod.AVERAGE, 0, OptionalDouble.empty()), Unit.CELSIUS);

  private static final Pattern CLAMPED =
      Pattern.compile("(\\d+(?:\\.\\d+)?)/(\\d+(?:\\.\\d+)?) ?([FC])");

  /** °C-days of degree-days as the file writes them. */
  double celsiusDays(double written) {
    return unit.spanToSi(written);
  }

  /** The keys {@code method}, {@code base} and {@code ceiling}. */
  static ThermalClocks read(MapReader map) {
    Problems problems = map.problems();
    int before = problems.count();
    String method = map.require("method", Texts::text, "average", "average");
    Matcher clamped = CLAMPED.matcher(method);
    if (clamped.matches()) {
      Unit unit = clamped.group(3).equals("F") ? Unit.FAHRENHEIT : Unit.CELSIUS;
      double ceiling = unit.toSi(Double.parseDouble(clamped.group(1)));
      double base = unit.toSi(Double.parseDouble(clamped.group(2)));
      if (ceiling <= base) {
        problems.add(
            map.mark("method"),
            "the ceiling of '" + method + "' does not lie above the base",
            "write the ceiling first, as '86/50 F'");
      }
      return new ThermalClocks(
          new ThermalClock(DegreeDayMethod.CLAMPED, base, OptionalDouble.of(ceiling)), unit);
    }
    if (!List.of("average", "single-sine").contains(method)) {
      if (problems.count() == before) {
        problems.add(
            map.mark("method"),
            "'" + method + "' is no way to count degree-days",
            "write average, single-sine, or ceiling and base as '86/50 F'");
      }
      map.find("base");
      map.find("ceiling");
      return UNREAD;
    }
    TextParser<Quantity> temperature = text -> Quantity.parse(text, Dimension.TEMPERATURE, "48 F");
    Quantity base = map.require("base", temperature, "48 F", new Quantity(0, Unit.CELSIUS));
    OptionalDouble ceiling =
        map.find("ceiling", temperature, "95 F")
            .map(q -> OptionalDouble.of(q.si()))
            .orElse(OptionalDouble.empty());
    if (ceiling.isPresent() && ceiling.getAsDouble() <= base.si()) {
      problems.add(
          map.mark("ceiling"),
          "the ceiling does not lie above the base",
          "write the higher one as ceiling");
    }
    return new ThermalClocks(
        new ThermalClock(
            method.equals("single-sine") ? DegreeDayMethod.SINGLE_SINE : DegreeDayMethod.AVERAGE,
            base.si(),
            ceiling),
        base.unit());
  }
}
