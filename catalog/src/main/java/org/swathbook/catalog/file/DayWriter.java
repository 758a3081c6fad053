package org.swathbook.catalog.file;

import java.util.Optional;
import java.util.function.Function;
import org.swathbook.catalog.DayTerms;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Terms;
import org.swathbook.measure.Unit;
import org.swathbook.source.MapWriter;
import org.swathbook.source.Node;

/** Writes the block {@code day} of an ingredient or a use. */
final class DayWriter {
  private final EntryWriter entry;
  private final TermsWriter over;

  DayWriter(EntryWriter entry, TermsWriter over) {
    this.entry = entry;
    this.over = over;
  }

  void write(MapWriter into, KeyPath at, Terms terms) {
    MapWriter map = new MapWriter();
    KeyPath here = at.then("day");
    part(terms, DayTerms::windMph)
        .ifPresent(s -> entry.stated(map, "wind", here, s, DayWriter::wind));
    part(terms, DayTerms::temperature)
        .ifPresent(s -> entry.stated(map, "temperature", here, s, DayWriter::temperature));
    part(terms, DayTerms::inversionRefused)
        .ifPresent(s -> entry.only(map, "inversion", here, s, "refused"));
    part(terms, DayTerms::hours)
        .ifPresent(s -> entry.stated(map, "hours", here, s, DayWriter::hours));
    part(terms, DayTerms::runoffRainHours)
        .ifPresent(
            s -> entry.text(map, "runoffRain", here, s, h -> ExactText.quantity(h, Unit.HOUR)));
    part(terms, DayTerms::downwindBuffer)
        .ifPresent(s -> entry.stated(map, "buffer", here, s, DayWriter::buffer));
    TermsWriter.putUnlessEmpty(into, "day", map);
  }

  private <T> Optional<Stated<T>> part(Terms terms, Function<DayTerms, Stated<T>> part) {
    return over.differing(terms, t -> part.apply(t.day()));
  }

  private static Node wind(Limit mph) {
    MapWriter map = new MapWriter();
    LimitsWriter.minMax(map, mph, v -> ExactText.quantity(v, Unit.MILE_PER_HOUR));
    return map.node();
  }

  private static Node temperature(DayTerms.TemperatureLimit limit) {
    MapWriter map = new MapWriter();
    LimitsWriter.minMax(
        map, limit.celsius(), c -> ExactText.quantity(c, Unit.CELSIUS, Unit.FAHRENHEIT));
    return advice(map, limit.advice());
  }

  private static Node hours(DayTerms.SprayHours hours) {
    MapWriter map =
        new MapWriter()
            .put("from", sun(hours.afterSunrise(), "after", "before", "sunrise"))
            .put("to", sun(hours.beforeSunset(), "before", "after", "sunset"));
    return advice(map, hours.advice());
  }

  private static String sun(double hours, String side, String otherSide, String event) {
    int sign = Double.compare(hours, 0);
    return sign == 0
        ? event
        : ExactText.number(Math.abs(hours)) + " h " + (sign > 0 ? side : otherSide) + " " + event;
  }

  private static Node advice(MapWriter map, boolean advice) {
    return (advice ? map.put("advice", "yes") : map).node();
  }

  private static Node buffer(DayTerms.Buffer buffer) {
    MapWriter map =
        new MapWriter().put("downwind", ExactText.quantity(buffer.downwindFt(), Unit.FOOT));
    buffer.fieldCropsFt().ifPresent(ft -> map.put("fieldCrops", ExactText.quantity(ft, Unit.FOOT)));
    return map.node();
  }
}
