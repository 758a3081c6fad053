package org.swathbook.catalog.file;

import java.time.MonthDay;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.swathbook.catalog.Competition;
import org.swathbook.catalog.Emergence;
import org.swathbook.catalog.HeightCurve;
import org.swathbook.catalog.SeedBiology;
import org.swathbook.catalog.Weed;
import org.swathbook.measure.Unit;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapWriter;
import org.swathbook.source.Node;

/** Writes a weed. */
final class WeedWriter {
  private static final List<Unit> AREAS =
      List.of(Unit.SQUARE_METRE, Unit.SQUARE_FOOT, Unit.ACRE, Unit.HECTARE);

  private final EntryWriter entry = new EntryWriter();

  private WeedWriter() {}

  static MapNode write(Weed weed) {
    return new WeedWriter().keys(weed);
  }

  private MapNode keys(Weed w) {
    MapWriter map =
        new MapWriter()
            .put("format", WeedReader.FORMAT)
            .put("eppo", w.id().value())
            .put("name", w.name())
            .put("latin", w.latin())
            .putAll("aliases", w.aliases())
            .put("kind", w.kind().name().toLowerCase(Locale.ROOT))
            .put("family", w.family())
            .put("genus", w.genus())
            .put("emergence", emergence(w.emergence()))
            .put("height", height(w.height()))
            .put("competition", competition(w))
            .put("seed", seed(w.seed()));
    return map.put("sources", entry.sources(map.node(), w.sources()))
        .put("reviewed", w.reviewed().toString())
        .node();
  }

  private Node emergence(Emergence e) {
    entry.source(KeyPath.ROOT.then("emergence").then("points"), e.source());
    List<Double> sums = new ArrayList<>(List.of(e.at10(), e.at50(), e.at90()));
    e.tail().ifPresent(t -> sums.add(t.until()));
    ThermalClockWriter clock = new ThermalClockWriter(e.clock(), sums);
    MapWriter map =
        new MapWriter()
            .put("degreeDays", clock.keys().put("start", day(e.start())).node())
            .put(
                "points",
                new MapWriter()
                    .put("10 %", clock.sum(e.at10()))
                    .put("50 %", clock.sum(e.at50()))
                    .put("90 %", clock.sum(e.at90()))
                    .node());
    e.tail()
        .ifPresent(
            t ->
                map.put(
                    "tail",
                    new MapWriter()
                        .put("share", ExactText.share(t.share()))
                        .put("until", clock.sum(t.until()))
                        .node()));
    e.waterBaseMPa()
        .ifPresent(
            base ->
                map.put(
                    "water", new MapWriter().put("base", ExactText.number(base) + " MPa").node()));
    return map.node();
  }

  /** {@code Jan 1}. */
  private static String day(MonthDay day) {
    return day.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH)
        + " "
        + day.getDayOfMonth();
  }

  private Node height(HeightCurve h) {
    entry.source(KeyPath.ROOT.then("height").then("slope"), h.source());
    return new MapWriter()
        .put("base", ExactText.quantity(h.baseC(), Unit.CELSIUS))
        .put("slope", ExactText.quantity(h.slopeCm(), Unit.CENTIMETRE) + " per degree-day")
        .put("r", ExactText.number(h.relativeRate()))
        .put("lag", ExactText.number(h.lag()))
        .put("max", ExactText.quantity(h.maxCm(), Unit.CENTIMETRE, Unit.METRE))
        .node();
  }

  private Node competition(Weed w) {
    MapWriter map = new MapWriter();
    w.competition()
        .forEach(
            (crop, c) -> {
              map.put(
                  crop.value(),
                  new MapWriter()
                      .put("i", lossPerPlant(c))
                      .put("a", ExactText.share(c.greatestLoss()))
                      .node());
              entry.source(KeyPath.ROOT.then("competition").then(crop.value()), c.source());
            });
    return map.node();
  }

  /** On a square metre where a percentage does it, else on the area for which one does. */
  private static String lossPerPlant(Competition c) {
    double loss = c.lossPerPlant();
    for (Unit area : AREAS) {
      double size = area.toSi(1);
      OptionalDouble percent =
          ExactText.inverse(p -> Unit.PERCENT.toSi(p) * size, loss / size * 100, loss);
      if (percent.isPresent()) {
        return perPlant(percent.getAsDouble(), area);
      }
    }
    return perPlant(loss * 100, Unit.SQUARE_METRE);
  }

  private static String perPlant(double percent, Unit area) {
    return ExactText.number(percent) + " % per plant/" + area.symbol();
  }

  private Node seed(SeedBiology s) {
    entry.source(KeyPath.ROOT.then("seed").then("fecundity"), s.source());
    return new MapWriter()
        .put("emerged", ExactText.share(s.emerged()))
        .put("survival", ExactText.share(s.survival()))
        .put("fecundity", ExactText.number(s.fecundity()))
        .put("selfing", ExactText.share(s.selfing()))
        .node();
  }
}
