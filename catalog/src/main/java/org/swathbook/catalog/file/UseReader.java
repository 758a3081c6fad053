package org.swathbook.catalog.file;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.swathbook.catalog.Cap;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Method;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.RateRow;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Terms;
import org.swathbook.catalog.Trait;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.WeedHeights;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Unit;
import org.swathbook.source.MapReader;
import org.swathbook.source.Node;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/** Reads one labelled use of an ingredient. */
final class UseReader {
  private static final String ANY = "any";
  private static final Set<String> BESIDE_REFUSAL =
      Set.of("crop", "position", "formulations", "refusedUse", "note");
  static final TextParser<Position> POSITION = Texts.oneOf(Position.values(), Position::spelling);
  private static final TextParser<Method> METHOD = Texts.oneOf(Method.values(), Method::spelling);

  private final Entry entry;
  private final Names<CropId> crops;
  private final Map<CropId, Crop> cropsRead;
  private final TermsReader termsReader;
  private final RegistrationReader registrations;
  private final UseRatesReader useRates;
  private final CapReader caps;
  private final PlantingBandReader plantingBands;
  private final HarvestReader harvest;

  UseReader(
      Entry entry,
      ActiveRates rates,
      Names<CropId> crops,
      Names<WeedId> weeds,
      Map<CropId, Crop> cropsRead,
      TermsReader termsReader) {
    this.entry = entry;
    this.crops = crops;
    this.cropsRead = cropsRead;
    this.termsReader = termsReader;
    this.registrations = new RegistrationReader(entry);
    this.useRates = new UseRatesReader(entry, rates, weeds);
    this.caps = new CapReader(entry, rates);
    this.plantingBands = new PlantingBandReader(entry, rates);
    this.harvest = new HarvestReader(entry);
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
    String condition = m.find("condition", Texts::text, "seed at least 1.5 in deep").orElse("");
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
    Stated<List<RateRow>> rateRows = entry.stated(m, "rate", place, "rate", useRates::rows);
    Stated<List<Cap>> seasonCaps = entry.stated(m, "cap", place, "cap", caps::read);
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
            useRates.ofWeeds(m, place, rateRows),
            entry.stated(
                m,
                "incorporate",
                place,
                "whether it may be worked in",
                TermsReader.only("refused"),
                "refused"),
            entry.stated(m, "plantingInterval", place, "days before planting", plantingBands::read),
            entry.stated(
                m,
                "soilPh",
                place,
                "soil pH limit",
                n -> Limits.read(n, SoilConditions.PH, "{before: 7.5}", entry.problems())),
            seasonCaps,
            entry.stated(m, "applications", place, "applications a season", atLeastOne(), "2"),
            entry.stated(m, "repeat", place, "days between applications", Texts::days, "12 days"),
            harvest.read(m, place),
            entry.stated(
                m,
                "weedHeight",
                place,
                "weed height",
                entry.map("weedHeight: {broadleaf: 4 in}", UseReader::weedHeights)),
            registrations.read(m, place),
            termsReader.read(m, place, ofIngredient),
            condition,
            note);
    m.done();
    caps.check(m, use);
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
        new LinkedHashSet<>(MapReader.all(node, Traits.PARSER, "glyphosate", entry.problems())));
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
