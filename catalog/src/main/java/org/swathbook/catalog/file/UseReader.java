package org.swathbook.catalog.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.swathbook.catalog.Cap;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.HarvestLimit;
import org.swathbook.catalog.Method;
import org.swathbook.catalog.PlantingBand;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.RateRow;
import org.swathbook.catalog.SoilCondition;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Terms;
import org.swathbook.catalog.Trait;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.WeedHeights;
import org.swathbook.catalog.WeedId;
import org.swathbook.catalog.WeedRate;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
import org.swathbook.measure.RateRange;
import org.swathbook.measure.Unit;
import org.swathbook.source.ListNode;
import org.swathbook.source.MapReader;
import org.swathbook.source.Nearest;
import org.swathbook.source.Node;
import org.swathbook.source.ScalarNode;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/** Reads one labelled use of an ingredient. */
final class UseReader {
  private static final String ANY = "any";
  private static final Set<String> BESIDE_REFUSAL =
      Set.of("crop", "position", "formulations", "refusedUse", "note");
  static final List<String> TRAITS =
      List.of(
          "2-4-d",
          "accase-tolerant",
          "als-tolerant",
          "dicamba",
          "fop-tolerant",
          "glufosinate",
          "glyphosate",
          "imidazolinone",
          "isoxaflutole",
          "mesotrione",
          "safened-seed");

  /** A trait or seed treatment that labels speak of. */
  static final TextParser<Trait> TRAIT =
      text -> {
        Trait trait = Trait.of(text);
        if (!TRAITS.contains(trait.value())) {
          throw new MeasureException(
              "'" + text + "' is no trait; " + Nearest.hint(trait.value(), TRAITS));
        }
        return trait;
      };

  private static final TextParser<Position> POSITION =
      Texts.oneOf(Position.values(), Position::spelling);
  private static final TextParser<Method> METHOD = Texts.oneOf(Method.values(), Method::spelling);
  private static final TextParser<Cap.CapPeriod> PERIOD =
      Texts.oneOf(Cap.CapPeriod.values(), p -> p.spelling().replace(' ', '-'));

  private final Entry entry;
  private final ActiveRates rates;
  private final Names<CropId> crops;
  private final Names<WeedId> weeds;
  private final Map<CropId, Crop> cropsRead;
  private final TermsReader termsReader;
  private final RegistrationReader registrations;

  UseReader(
      Entry entry,
      ActiveRates rates,
      Names<CropId> crops,
      Names<WeedId> weeds,
      Map<CropId, Crop> cropsRead,
      TermsReader termsReader) {
    this.entry = entry;
    this.rates = rates;
    this.crops = crops;
    this.weeds = weeds;
    this.cropsRead = cropsRead;
    this.termsReader = termsReader;
    this.registrations = new RegistrationReader(entry);
  }

  /**
   * The use.
   *
   * @param number its place among the uses of the ingredient, from 1
   */
  Optional<Use> read(int number, MapReader m, Terms ofIngredient) {
    TextParser<Optional<CropId>> cropName =
        text ->
            text.strip().equals(ANY) ? Optional.empty() : Optional.of(crops.known().parse(text));
    Optional<CropId> crop = m.require("crop", cropName, "soybean", Optional.empty());
    m.require("position", "[pre]");
    Set<Position> positions = new LinkedHashSet<>(m.findAll("position", POSITION, "pre"));
    Place place =
        Place.ofUse(
            number,
            crop.map(CropId::value).orElse(ANY),
            positions.stream().map(Position::spelling).toList());
    boolean refused = m.find("refusedUse", Texts::yesNo, "yes").orElse(false);
    Set<String> formulations =
        new LinkedHashSet<>(m.findAll("formulations", Formulations.CODE, "CS"));
    Set<Method> methods = new LinkedHashSet<>(m.findAll("method", METHOD, "directed"));
    String note = m.find("note", Texts::text, "kills emerged corn").orElse("");
    if (refused) {
      entry.keepSource(place, m.mark());
      checkNothingElse(m);
    }
    if (crop.isEmpty() && positions.stream().anyMatch(p -> p.phase() == Position.Phase.IN_CROP)) {
      m.problems()
          .add(
              m.mark("position"),
              "a use for any crop cannot be made over a crop",
              "name the crop, or keep to positions before its emergence or after harvest");
    }
    Optional<Crop> known = crop.flatMap(c -> Optional.ofNullable(cropsRead.get(c)));
    boolean stagesUnknown = crop.isPresent() && known.isEmpty();
    Stated<List<RateRow>> rateRows = entry.stated(m, "rate", place, "rate", this::rateRows);
    Stated<List<Cap>> caps = entry.stated(m, "cap", place, "cap", this::caps);
    Use use =
        new Use(
            crop,
            positions,
            formulations,
            methods,
            refused,
            entry.stated(m, "trait", place, "trait", this::traits),
            entry.stated(
                m,
                "timing",
                place,
                "window",
                entry.map(
                    "timing: {before: emergence}",
                    w -> TimePoints.window(w, known, stagesUnknown))),
            entry.stated(
                m,
                "cropHeight",
                place,
                "crop height",
                n ->
                    Limits.read(
                        n, Texts.in(Unit.CENTIMETRE, "30 in"), "{to: 30 in}", entry.problems())),
            rateRows,
            weedRates(m, place, rateRows),
            entry.stated(
                m,
                "incorporate",
                place,
                "whether it may be worked in",
                TermsReader.only("refused"),
                "refused"),
            entry.stated(m, "plantingInterval", place, "days before planting", this::plantingBands),
            entry.stated(
                m,
                "soilPh",
                place,
                "soil pH limit",
                n -> Limits.read(n, SoilConditions.PH, "{before: 7.5}", entry.problems())),
            caps,
            entry.stated(m, "applications", place, "applications a season", atLeastOne(), "2"),
            entry.stated(m, "repeat", place, "days between applications", Texts::days, "12 days"),
            harvest(m, place),
            entry.stated(
                m,
                "weedHeight",
                place,
                "weed height",
                entry.map("weedHeight: {broadleaf: 4 in}", UseReader::weedHeights)),
            registrations.read(m, place),
            termsReader.read(m, place, ofIngredient),
            note);
    m.done();
    checkCaps(m, use);
    return Optional.of(use);
  }

  /** What a label forbids outright has no rate, no window and no limit. */
  private static void checkNothingElse(MapReader m) {
    m.node().entries().stream()
        .filter(e -> !BESIDE_REFUSAL.contains(e.key()))
        .findFirst()
        .ifPresent(
            e ->
                m.problems()
                    .add(
                        e.keyMark(),
                        "'" + e.key() + "' stands in a use that the label refuses",
                        "keep only crop, position, formulations and note, or take out"
                            + " 'refusedUse'"));
  }

  private static TextParser<Integer> atLeastOne() {
    return text -> {
      int n = Texts.whole(text);
      if (n < 1) {
        throw new MeasureException("'" + text + "' allows none; write 1 or more, or 'none'");
      }
      return n;
    };
  }

  private Optional<Set<Trait>> traits(Node node) {
    return Optional.of(
        new LinkedHashSet<>(MapReader.all(node, TRAIT, "glyphosate", entry.problems())));
  }

  private Optional<List<RateRow>> rateRows(Node node) {
    if (node instanceof ListNode) {
      return entry.rows(node, "- {texture: coarse, rate: …}", this::rateRow);
    }
    return MapReader.scalar(node, rates.range(), rates.example(), entry.problems())
        .map(r -> List.of(new RateRow(SoilCondition.ALWAYS, Optional.of(r))));
  }

  private Optional<RateRow> rateRow(MapReader m) {
    SoilCondition when = SoilConditions.read(m);
    boolean refused = m.find("refused", Texts::yesNo, "yes").orElse(false);
    if (refused == m.has("rate")) {
      m.problems().add(m.mark(), "a row either states a rate or refuses", "write one of the two");
      return Optional.empty();
    }
    return Optional.of(
        new RateRow(
            when, refused ? Optional.empty() : m.find("rate", rates.range(), rates.example())));
  }

  private Stated<List<WeedRate>> weedRates(
      MapReader m, Place place, Stated<List<RateRow>> rateRows) {
    Stated<List<WeedRate>> read =
        entry.stated(
            m,
            "weedRate",
            place,
            "least rate for a weed",
            n ->
                entry.rows(
                    n,
                    "- {weeds: [ZEAMX], upTo: 12 in, least: " + rates.example() + "}",
                    this::weedRate));
    OptionalDouble most =
        rateRows.find().orElse(List.of()).stream()
            .flatMap(r -> r.rates().stream())
            .mapToDouble(r -> r.high().kgPerHa())
            .max();
    List<WeedRate> before = new ArrayList<>();
    for (WeedRate row : read.find().orElse(List.of())) {
      if (most.isPresent() && Quantity.exceeds(row.least().kgPerHa(), most.getAsDouble())) {
        m.problems()
            .add(
                m.mark("weedRate"),
                "the least rate of " + row.least() + " for a weed is above all that the use allows",
                "check which of 'weedRate' and 'rate' is wrong");
      }
      if (before.stream().anyMatch(b -> covers(b, row))) {
        m.problems()
            .add(
                m.mark("weedRate"),
                "no plant can reach a row of it, since a row before covers the same weed and height",
                "write the rows of a weed from the lowest 'upTo' to the highest");
      }
      before.add(row);
    }
    return read;
  }

  private static boolean covers(WeedRate first, WeedRate later) {
    return first.weeds().containsAll(later.weeds())
        && (first.upToCm().isEmpty()
            || later.upToCm().isPresent()
                && !Quantity.exceeds(later.upToCm().getAsDouble(), first.upToCm().getAsDouble()));
  }

  private Optional<WeedRate> weedRate(MapReader m) {
    m.require("weeds", "[ZEAMX]");
    Set<WeedId> named = new LinkedHashSet<>(m.findAll("weeds", weeds.known(), "ZEAMX"));
    return Optional.of(
        new WeedRate(
            named,
            m.find("upTo", Texts.in(Unit.CENTIMETRE, "12 in"), "12 in")
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty()),
            m.require("least", rates.one(), rates.example(), Rate.lbPerAcre(0, rates.basis()))));
  }

  private Optional<List<PlantingBand>> plantingBands(Node node) {
    if (node instanceof ScalarNode) {
      return MapReader.scalar(node, Texts::days, "14 days", entry.problems())
          .map(
              d ->
                  List.of(
                      new PlantingBand(
                          SoilCondition.ALWAYS, Optional.empty(), d, OptionalDouble.empty())));
    }
    List<Node> items = MapReader.itemsOf(node, "- {days: 14}", entry.problems());
    List<PlantingBand> bands = new ArrayList<>();
    for (Node item : items) {
      Optional<PlantingBand> band = entry.map("- {days: 14}", this::plantingBand).apply(item);
      PlantingBand last = bands.isEmpty() ? null : bands.get(bands.size() - 1);
      if (band.isPresent() && last != null && !rises(last, band.get())) {
        entry
            .problems()
            .add(
                item.mark(),
                "no rate can reach this row, since the row before covers it",
                "write the rows from the lowest 'upTo' to the highest");
      }
      band.ifPresent(bands::add);
    }
    return Optional.of(bands);
  }

  private static boolean rises(PlantingBand before, PlantingBand after) {
    return !before.when().equals(after.when())
        || before.upTo().isPresent()
            && (after.upTo().isEmpty()
                || after.upTo().get().kgPerHa() > before.upTo().get().kgPerHa());
  }

  private Optional<PlantingBand> plantingBand(MapReader m) {
    return Optional.of(
        new PlantingBand(
            SoilConditions.read(m),
            m.find("upTo", rates.one(), rates.example()),
            m.require("days", UseReader::bareDays, "14", 0),
            m.find("rain", Texts.in(Unit.MILLIMETRE, "1 in"), "1 in")
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty())));
  }

  /** {@code 14} or {@code 14 days}. */
  static int bareDays(String text) {
    int days = text.contains("day") ? Texts.days(text) : Texts.whole(text);
    if (days < 0) {
      throw new MeasureException("'" + text + "' is below zero; write 0 or more days");
    }
    return days;
  }

  private Optional<List<Cap>> caps(Node node) {
    return entry.rows(node, "cap: {amount: " + rates.example() + ", per: season}", this::cap);
  }

  private Optional<Cap> cap(MapReader m) {
    return Optional.of(
        new Cap(
            m.require("amount", rates.one(), rates.example(), Rate.lbPerAcre(0, rates.basis())),
            m.require("per", PERIOD, "season", Cap.CapPeriod.SEASON),
            new LinkedHashSet<>(m.findAll("counts", POSITION, "post"))));
  }

  private void checkCaps(MapReader m, Use use) {
    if (!entry.isSound()) {
      return;
    }
    Optional<Rate> highest =
        use.rates().find().orElse(List.of()).stream()
            .flatMap(r -> r.rates().stream())
            .map(RateRange::high)
            .max(Comparator.comparingDouble(Rate::kgPerHa));
    if (highest.isEmpty()) {
      return;
    }
    for (Cap cap : use.caps().find().orElse(List.of())) {
      if (cap.counts(use.positions())
          && Quantity.exceeds(highest.get().kgPerHa(), cap.amount().kgPerHa())) {
        m.problems()
            .add(
                m.mark("cap"),
                "the cap of "
                    + cap.amount()
                    + " lies below the highest single rate of "
                    + highest.get(),
                "check which of the two is wrong");
      }
    }
  }

  private Map<Commodity, Stated<HarvestLimit>> harvest(MapReader m, Place place) {
    Map<Commodity, Stated<HarvestLimit>> out = new LinkedHashMap<>();
    Optional<MapReader> map = m.findMap("intervals", "intervals: {grain: 70 days}");
    if (map.isEmpty()) {
      return out;
    }
    for (Commodity c : Commodity.values()) {
      String key = c.name().toLowerCase(Locale.ROOT);
      if (map.get().has(key)) {
        out.put(
            c,
            entry.stated(
                map.get(),
                key,
                place.then("intervals"),
                "days before " + key,
                UseReader::harvestLimit,
                "70 days"));
      }
    }
    map.get().done();
    return out;
  }

  private static HarvestLimit harvestLimit(String text) {
    return text.strip().equals("refused")
        ? new HarvestLimit(0, true)
        : new HarvestLimit(Texts.days(text), false);
  }

  private static Optional<WeedHeights> weedHeights(MapReader m) {
    TextParser<Double> cm = Texts.in(Unit.CENTIMETRE, "4 in");
    Optional<Double> broadleaf = m.find("broadleaf", cm, "4 in");
    Optional<Double> grass = m.find("grass", cm, "4 in");
    if (broadleaf.isEmpty() && grass.isEmpty() && m.node().entries().isEmpty()) {
      m.problems().add(m.mark(), "no height is given", "write '{broadleaf: 4 in}', or 'none'");
    }
    return Optional.of(
        new WeedHeights(
            broadleaf.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
            grass.map(OptionalDouble::of).orElse(OptionalDouble.empty())));
  }
}
