package org.swathbook.catalog.file;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.swathbook.catalog.Cap;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.HarvestLimit;
import org.swathbook.catalog.Method;
import org.swathbook.catalog.PlantingBand;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.RateRow;
import org.swathbook.catalog.Registration;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TimePoint;
import org.swathbook.catalog.Trait;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.WeedHeights;
import org.swathbook.catalog.WeedId;
import org.swathbook.catalog.WeedRate;
import org.swathbook.catalog.Window;
import org.swathbook.measure.Unit;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapWriter;
import org.swathbook.source.Node;

/** Writes one labelled use of an ingredient. */
final class UseWriter {
  private final EntryWriter entry;
  private final TermsWriter terms;

  /**
   * Writes the uses of one ingredient.
   *
   * @param terms over those of the ingredient
   */
  UseWriter(EntryWriter entry, TermsWriter terms) {
    this.entry = entry;
    this.terms = terms;
  }

  /**
   * The keys of a use.
   *
   * @param number its place among the uses, from 1
   */
  MapNode write(int number, Use use) {
    KeyPath at = KeyPath.ROOT.then("uses").then(Integer.toString(number));
    MapWriter map =
        new MapWriter()
            .put("crop", use.crop().map(CropId::value).orElse("any"))
            .putAll("position", spellings(use.positions()))
            .putAll("formulations", use.formulations())
            .putAll("method", use.methods().stream().map(Method::spelling).toList());
    if (use.refused()) {
      map.put("refusedUse", "yes");
    }
    entry.stated(map, "timing", at, use.timing(), UseWriter::window);
    entry.stated(
        map, "cropHeight", at, use.cropHeightCm(), l -> LimitsWriter.keys(l, UseWriter::height));
    entry.stated(
        map,
        "trait",
        at,
        use.traits(),
        t -> MapWriter.oneOrMore(t.stream().map(Trait::value).toList()));
    entry.stated(map, "rate", at, use.rates(), UseWriter::rates);
    entry.stated(map, "weedRate", at, use.weedRates(), UseWriter::weedRates);
    entry.only(map, "incorporate", at, use.incorporationRefused(), "refused");
    entry.stated(map, "plantingInterval", at, use.plantingInterval(), UseWriter::bands);
    entry.stated(map, "soilPh", at, use.soilPh(), l -> LimitsWriter.keys(l, ExactText::number));
    entry.stated(map, "cap", at, use.caps(), UseWriter::caps);
    entry.text(map, "applications", at, use.applications(), n -> Integer.toString(n));
    entry.text(map, "repeat", at, use.repeatDays(), d -> d + " days");
    harvest(map, at, use);
    entry.stated(map, "weedHeight", at, use.weedHeights(), UseWriter::weedHeights);
    registration(map, at, use.registration());
    if (!use.condition().isEmpty()) {
      map.put("condition", MapWriter.line(use.condition()));
    }
    if (!use.note().isEmpty()) {
      map.put("note", MapWriter.line(use.note()));
    }
    terms.foliar(map, at, use.terms());
    terms.rest(map, at, use.terms());
    return map.node();
  }

  private static List<String> spellings(Collection<Position> positions) {
    return positions.stream().map(Position::spelling).toList();
  }

  private static String height(double cm) {
    return ExactText.quantity(cm, Unit.CENTIMETRE, Unit.INCH);
  }

  private static Node window(Window window) {
    MapWriter map = new MapWriter();
    point(map, "from", window.from());
    point(map, "to", window.to());
    point(map, "before", window.before());
    return map.node();
  }

  /** A point prints as it is written. */
  private static void point(MapWriter map, String key, Optional<TimePoint> point) {
    point.ifPresent(p -> map.put(key, p.toString()));
  }

  private static Node rates(List<RateRow> rows) {
    if (rows.size() == 1 && rows.get(0).when().isAlways() && rows.get(0).rates().isPresent()) {
      return MapWriter.scalar(ExactText.range(rows.get(0).rates().get()));
    }
    return MapWriter.list(rows.stream().map(UseWriter::row).toList());
  }

  private static Node row(RateRow row) {
    MapWriter map = new MapWriter();
    SoilConditionsWriter.write(map, row.when());
    row.rates()
        .ifPresentOrElse(r -> map.put("rate", ExactText.range(r)), () -> map.put("refused", "yes"));
    return map.node();
  }

  private static Node weedRates(List<WeedRate> rows) {
    return MapWriter.list(rows.stream().map(UseWriter::weedRate).toList());
  }

  private static Node weedRate(WeedRate row) {
    MapWriter map =
        new MapWriter().putAll("weeds", row.weeds().stream().map(WeedId::value).toList());
    row.upToCm().ifPresent(cm -> map.put("upTo", height(cm)));
    return map.put("least", ExactText.rate(row.least())).node();
  }

  private static Node bands(List<PlantingBand> bands) {
    PlantingBand first = bands.get(0);
    if (bands.size() == 1
        && first.when().isAlways()
        && first.upTo().isEmpty()
        && first.rainMm().isEmpty()) {
      return MapWriter.scalar(first.days() + " days");
    }
    return MapWriter.list(bands.stream().map(UseWriter::band).toList());
  }

  private static Node band(PlantingBand band) {
    MapWriter map = new MapWriter();
    SoilConditionsWriter.write(map, band.when());
    band.upTo().ifPresent(r -> map.put("upTo", ExactText.rate(r)));
    map.put("days", Integer.toString(band.days()));
    band.rainMm().ifPresent(mm -> map.put("rain", rain(mm)));
    return map.node();
  }

  static String rain(double mm) {
    return ExactText.quantity(mm, Unit.MILLIMETRE, Unit.INCH);
  }

  private static Node caps(List<Cap> caps) {
    List<MapNode> rows = caps.stream().map(UseWriter::cap).toList();
    return rows.size() == 1 ? rows.get(0) : MapWriter.list(rows);
  }

  private static MapNode cap(Cap cap) {
    return new MapWriter()
        .put("amount", ExactText.rate(cap.amount()))
        .put("per", cap.per().spelling().replace(' ', '-'))
        .putAll("counts", spellings(cap.counts()))
        .node();
  }

  private void harvest(MapWriter map, KeyPath at, Use use) {
    MapWriter intervals = new MapWriter();
    for (Commodity c : Commodity.values()) {
      Stated<HarvestLimit> limit = use.harvestLimit(c);
      entry.text(
          intervals,
          c.name().toLowerCase(Locale.ROOT),
          at.then("intervals"),
          limit,
          l -> l.refused() ? "refused" : l.days() + " days");
    }
    TermsWriter.putUnlessEmpty(map, "intervals", intervals);
  }

  private static Node weedHeights(WeedHeights heights) {
    MapWriter map = new MapWriter();
    heights.broadleafCm().ifPresent(cm -> map.put("broadleaf", height(cm)));
    heights.grassCm().ifPresent(cm -> map.put("grass", height(cm)));
    return map.node();
  }

  private void registration(MapWriter map, KeyPath at, Registration registration) {
    MapWriter states =
        new MapWriter()
            .putAll("only", registration.states().only())
            .putAll("refused", registration.states().refused());
    TermsWriter.putUnlessEmpty(map, "state", states);
    entry.text(map, "labelYears", at, registration.years(), UseWriter::years);
    entry.stated(map, "cutoff", at, registration.cutoffs(), UseWriter::cutoffs);
  }

  private static String years(Registration.LabelYears years) {
    String first = String.format(Locale.ROOT, "%04d", years.first());
    return years.first() == years.last()
        ? first
        : first + "-" + String.format(Locale.ROOT, "%04d", years.last());
  }

  private static Node cutoffs(List<Registration.Cutoff> cutoffs) {
    return MapWriter.list(
        cutoffs.stream()
            .map(
                c ->
                    new MapWriter()
                        .putAll("states", c.states())
                        .put("date", new TimePoint.OnMonthDay(c.last()).toString())
                        .node())
            .toList());
  }
}
