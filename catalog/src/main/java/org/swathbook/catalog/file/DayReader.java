package org.swathbook.catalog.file;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.swathbook.catalog.DayTerms;
import org.swathbook.catalog.Stated;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
import org.swathbook.source.MapReader;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/** Reads the block {@code day} of an ingredient or a use. */
final class DayReader {
  private static final Pattern BY_THE_SUN =
      Pattern.compile("(?:(\\d+(?:\\.\\d+)?) (?:h|hours?) (before|after) )?(sunrise|sunset)");

  private final Entry entry;

  DayReader(Entry entry) {
    this.entry = entry;
  }

  static DayTerms unknown() {
    return new DayTerms(
        Stated.unknown("wind limit"),
        Stated.unknown("temperature limit"),
        Stated.unknown("whether spraying into an inversion is forbidden"),
        Stated.unknown("allowed time of day"),
        Stated.unknown("rain-free forecast"),
        Stated.unknown("downwind buffer"));
  }

  DayTerms read(MapReader in, Place holder, DayTerms base) {
    MapReader m = TermsReader.block(in, "day", "day: {inversion: refused}");
    Place at = holder.then("day");
    DayTerms read =
        new DayTerms(
            TermsReader.over(
                base.windMph(),
                m,
                "wind",
                entry.stated(
                    m,
                    "wind",
                    at,
                    "wind limit",
                    entry.map(
                        "wind: {min: 3 mph, max: 10 mph}",
                        w ->
                            Limits.minMax(
                                w,
                                Texts.in(Unit.MILE_PER_HOUR, "10 mph"),
                                "{min: 3 mph, max: 10 mph}")))),
            TermsReader.over(
                base.temperature(),
                m,
                "temperature",
                entry.stated(
                    m,
                    "temperature",
                    at,
                    "temperature limit",
                    entry.map("temperature: {max: 95 F}", DayReader::temperature))),
            TermsReader.over(
                base.inversionRefused(),
                m,
                "inversion",
                entry.stated(
                    m,
                    "inversion",
                    at,
                    "whether spraying into an inversion is forbidden",
                    TermsReader.only("refused"),
                    "refused")),
            TermsReader.over(
                base.hours(),
                m,
                "hours",
                entry.stated(
                    m,
                    "hours",
                    at,
                    "allowed time of day",
                    entry.map("hours: {from: 1 h after sunrise}", DayReader::hours))),
            TermsReader.over(
                base.runoffRainHours(),
                m,
                "runoffRain",
                entry.stated(
                    m,
                    "runoffRain",
                    at,
                    "rain-free forecast",
                    Texts.in(Unit.HOUR, "48 h"),
                    "48 h")),
            TermsReader.over(
                base.downwindBuffer(),
                m,
                "buffer",
                entry.stated(
                    m,
                    "buffer",
                    at,
                    "downwind buffer",
                    entry.map("buffer: {downwind: 240 ft}", DayReader::buffer))));
    m.done();
    return read;
  }

  private static Optional<DayTerms.Buffer> buffer(MapReader m) {
    double downwind = m.require("downwind", Texts.in(Unit.FOOT, "240 ft"), "240 ft", 0.0);
    Optional<Double> crops = m.find("fieldCrops", Texts.in(Unit.FOOT, "240 ft"), "240 ft");
    if (crops.filter(c -> Quantity.exceeds(c, downwind)).isPresent()) {
      m.problems()
          .add(
              m.mark("fieldCrops"),
              "the distance from field crops is above that from all else",
              "write the longer one under 'downwind'");
    }
    return Optional.of(
        new DayTerms.Buffer(
            downwind, crops.map(OptionalDouble::of).orElse(OptionalDouble.empty())));
  }

  private static Optional<DayTerms.TemperatureLimit> temperature(MapReader m) {
    boolean advice = m.find("advice", Texts::yesNo, "yes").orElse(false);
    return Limits.minMax(m, Texts.in(Unit.CELSIUS, "95 F"), "{max: 95 F}")
        .map(limit -> new DayTerms.TemperatureLimit(limit, advice));
  }

  private static Optional<DayTerms.SprayHours> hours(MapReader m) {
    return Optional.of(
        new DayTerms.SprayHours(
            m.require("from", sun("sunrise", "after"), "1 h after sunrise", 0.0),
            m.require("to", sun("sunset", "before"), "2 h before sunset", 0.0),
            m.find("advice", Texts::yesNo, "yes").orElse(false)));
  }

  /** Hours on the named side of sunrise or sunset; negative on the other side. */
  private static TextParser<Double> sun(String event, String side) {
    return text -> {
      Matcher m = BY_THE_SUN.matcher(text.strip());
      if (!m.matches() || !m.group(3).equals(event)) {
        throw new MeasureException(
            "'"
                + text
                + "' is no time by the sun; write for example '1 h "
                + side
                + " "
                + event
                + "'");
      }
      if (m.group(1) == null) {
        return 0.0;
      }
      double hours = Double.parseDouble(m.group(1));
      return m.group(2).equals(side) ? hours : -hours;
    };
  }
}
