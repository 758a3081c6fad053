package org.swathbook.catalog.file;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.swathbook.catalog.Foliar;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.Setbacks;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Terms;
import org.swathbook.measure.Unit;
import org.swathbook.source.MapWriter;
import org.swathbook.source.Node;

/**
 * Writes what an ingredient or one of its uses says of every spraying; of a use only what differs
 * from its ingredient.
 */
final class TermsWriter {
  private final EntryWriter entry;
  private final Optional<Terms> base;

  /**
   * Writes terms over others.
   *
   * @param base what holds where a key is left out; empty for an ingredient's own
   */
  TermsWriter(EntryWriter entry, Optional<Terms> base) {
    this.entry = entry;
    this.base = base;
  }

  void foliar(MapWriter into, KeyPath at, Terms terms) {
    differing(terms, Terms::foliar)
        .ifPresent(s -> entry.stated(into, "foliar", at, s, f -> foliar(at.then("foliar"), f)));
  }

  private Node foliar(KeyPath at, Foliar foliar) {
    MapWriter map = new MapWriter();
    entry.text(map, "rainfast", at, foliar.rainfastHours(), h -> ExactText.quantity(h, Unit.HOUR));
    return map.node();
  }

  /** All but the activity through leaves. */
  void rest(MapWriter into, KeyPath at, Terms terms) {
    carrier(into, at, terms);
    differing(terms, Terms::reentryHours)
        .ifPresent(s -> entry.text(into, "reentry", at, s, h -> ExactText.quantity(h, Unit.HOUR)));
    differing(terms, Terms::restrictedUse)
        .ifPresent(s -> entry.text(into, "restrictedUse", at, s, yes -> yes ? "yes" : "no"));
    differing(terms, Terms::training)
        .ifPresent(s -> entry.stated(into, "training", at, s, MapWriter::line));
    new TankWriter(entry, this).write(into, at, terms);
    new DayWriter(entry, this).write(into, at, terms);
    differing(terms, Terms::setbacks)
        .ifPresent(s -> entry.stated(into, "setback", at, s, TermsWriter::setbacks));
  }

  /** What must be written; empty when it is inherited. */
  <T> Optional<Stated<T>> differing(Terms terms, Function<Terms, Stated<T>> part) {
    Stated<T> own = part.apply(terms);
    Optional<Stated<T>> inherited = base.map(part);
    if (inherited.filter(own::equals).isPresent()) {
      return Optional.empty();
    }
    if (own instanceof Stated.Unknown<T> unknown
        && inherited.isPresent()
        && !inherited.get().isUnknown()) {
      throw new IllegalArgumentException(
          "a use cannot leave open what its ingredient states: " + unknown.what());
    }
    return Optional.of(own);
  }

  private void carrier(MapWriter into, KeyPath at, Terms terms) {
    Optional<Stated<Double>> least = differing(terms, Terms::carrierMinGalPerAcre);
    Optional<Stated<Double>> advised = differing(terms, Terms::carrierAdvisedGalPerAcre);
    Optional<Stated<Double>> most = differing(terms, Terms::carrierMaxGalPerAcre);
    Optional<Stated<Limit>> ph = differing(terms, Terms::waterPh);
    Optional<Stated<Boolean>> fertilizer = differing(terms, Terms::fertilizerRefusedOverCrop);
    List<Optional<? extends Stated<?>>> all = List.of(least, advised, most, ph, fertilizer);
    if (all.stream().allMatch(s -> s.isPresent() && s.get().isNone())
        && all.stream().map(s -> s.orElseThrow().findSource()).distinct().count() == 1) {
      entry.text(into, "carrier", at, least.orElseThrow(), ExactText::number);
      return;
    }
    MapWriter map = new MapWriter();
    KeyPath here = at.then("carrier");
    least.ifPresent(s -> entry.text(map, "min", here, s, TermsWriter::gallons));
    advised.ifPresent(s -> entry.text(map, "advised", here, s, TermsWriter::gallons));
    most.ifPresent(s -> entry.text(map, "max", here, s, TermsWriter::gallons));
    ph.ifPresent(
        s ->
            entry.stated(
                map, "waterPh", here, s, l -> LimitsWriter.compared(l, ExactText::number)));
    fertilizer.ifPresent(s -> entry.only(map, "fertilizer", here, s, "refused after emergence"));
    putUnlessEmpty(into, "carrier", map);
  }

  private static String gallons(double perAcre) {
    return ExactText.number(perAcre) + " gal/acre";
  }

  static void putUnlessEmpty(MapWriter into, String key, MapWriter block) {
    if (!block.isEmpty()) {
      into.put(key, block.node());
    }
  }

  private static Node setbacks(Setbacks setbacks) {
    MapWriter map = new MapWriter();
    setbacks.feet().forEach((water, feet) -> map.put(water, ExactText.quantity(feet, Unit.FOOT)));
    return map.node();
  }
}
