package org.swathbook.catalog.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Movement;
import org.swathbook.catalog.Residual;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.Slug;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Terms;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.Basis;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Rate;
import org.swathbook.measure.Unit;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapReader;
import org.swathbook.source.Node;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/** Reads an active ingredient. */
final class IngredientReader {
  static final String FORMAT = "swathbook.ingredient/1";

  private static final TextParser<Site> SITE =
      text ->
          Site.find(text)
              .orElseThrow(
                  () ->
                      new MeasureException(
                          "'" + text + "' is no site of action; write its HRAC/WSSA number"));

  /** Rain in mm; {@code none} is none. */
  private static final TextParser<Double> RAIN =
      text -> text.strip().equals("none") ? 0.0 : Texts.in(Unit.MILLIMETRE, "0.5 in").parse(text);

  private static final TextParser<Movement> MOVEMENT =
      Texts.oneOf(Movement.values(), m -> m.name().toLowerCase(Locale.ROOT));

  private final Names<IngredientId> ingredients;
  private final Names<CropId> crops;
  private final Names<WeedId> weeds;
  private final Map<CropId, Crop> cropsRead;

  IngredientReader(
      Names<IngredientId> ingredients,
      Names<CropId> crops,
      Names<WeedId> weeds,
      Map<CropId, Crop> cropsRead) {
    this.ingredients = ingredients;
    this.crops = crops;
    this.weeds = weeds;
    this.cropsRead = cropsRead;
  }

  Optional<Ingredient> read(CatalogFile file, MapReader map) {
    Entry entry = new Entry(file, map, FORMAT);
    String name = map.require("name", Texts::text, "metribuzin", "?");
    entry.checkFileName("name", Slug.of(name));
    Basis basis = map.require("rateBasis", IngredientReader::basis, "ai", Basis.AI);
    ActiveRates rates = new ActiveRates(basis);
    TermsReader termsReader = new TermsReader(entry, new TankReader(entry, ingredients, crops));
    Terms terms = termsReader.read(map, Place.ROOT, TermsReader.unknown());
    UseReader useReader = new UseReader(entry, rates, crops, weeds, cropsRead, termsReader);
    Soil soil = soil(entry, rates);
    List<Use> uses = new ArrayList<>();
    List<Node> written = map.findList("uses", "- {crop: soybean, position: [pre], …}");
    for (int i = 0; i < written.size(); i++) {
      int number = i + 1;
      MapReader.of(written.get(i), "- {crop: soybean, …}", map.problems())
          .flatMap(m -> useReader.read(number, m, terms))
          .ifPresent(uses::add);
    }
    entry.keepSources(
        map, Place.ROOT, "name", "site", "family", "movement", "capGroup", "incorporate");
    entry.keepSources(map, Place.ROOT, "usesComplete");
    Ingredient ingredient =
        new Ingredient(
            new IngredientId(file.stem()),
            name,
            entry.aliases(),
            map.require("site", SITE, "5", new Site(0)),
            map.require("family", Texts::text, "triazinone", "?"),
            basis,
            map.require("movement", MOVEMENT, "xylem", Movement.XYLEM),
            map.require("capGroup", Texts::text, name, "?"),
            soil.residual(),
            soil.halfLifeDays(),
            uses,
            map.find("usesComplete", Texts::yesNo, "yes").orElse(false),
            map.find("rotation")
                .map(n -> new RotationReader(entry, rates, crops).read(n))
                .orElseGet(LinkedHashMap::new),
            terms,
            map.find("incorporate", Texts::text, "within 24 h"),
            entry.kept(),
            entry.reviewed());
    map.done();
    return entry.isSound() ? Optional.of(ingredient) : Optional.empty();
  }

  private record Soil(Stated<Residual> residual, Stated<Double> halfLifeDays) {}

  private static Soil soil(Entry entry, ActiveRates rates) {
    Optional<Node> node = entry.map().find("soil");
    String residual = "residual length";
    String halfLife = "half-life in soil";
    if (node.isEmpty()) {
      return new Soil(Stated.unknown(residual), Stated.unknown(halfLife));
    }
    Place place = Place.ROOT.then("soil");
    if (Entry.isNone(node.get())) {
      return new Soil(
          Stated.none(entry.source(place, node.get().mark())),
          Stated.none(entry.source(place, node.get().mark())));
    }
    Optional<MapReader> soil =
        MapReader.of(node.get(), "soil: {halfLife: 40 days}", entry.problems());
    if (soil.isEmpty()) {
      return new Soil(Stated.unknown(residual), Stated.unknown(halfLife));
    }
    MapReader m = soil.get();
    entry.keepSources(m, place, "residualHigh", "activatingRain");
    Soil read =
        new Soil(
            entry.stated(m, "residual", place, residual, n -> residual(entry, m, n, rates)),
            entry.stated(m, "halfLife", place, halfLife, IngredientReader::halfLife, "40 days"));
    if (m.has("residualHigh") && !(m.find("residual").orElse(null) instanceof MapNode)) {
      m.problems()
          .add(
              m.mark("residualHigh"),
              "a residual at the high rate stands without one at the low rate",
              "write 'residual: {at: …, days: …}' too, or take it out");
    }
    m.find("activatingRain", RAIN, "0.5 in");
    m.done();
    return read;
  }

  private record Length(Rate at, int days) {}

  private static Optional<Residual> residual(
      Entry entry, MapReader soil, Node low, ActiveRates rates) {
    String example = "{at: 0.25 lb " + rates.basis().symbol() + "/acre, days: 30}";
    Optional<Length> shorter = length(entry, low, rates, example);
    Optional<Length> longer =
        soil.require("residualHigh", example).flatMap(n -> length(entry, n, rates, example));
    double rainMm = soil.require("activatingRain", RAIN, "0.5 in", 0.0);
    if (shorter.isEmpty() || longer.isEmpty()) {
      return Optional.empty();
    }
    if (longer.get().at().kgPerHa() < shorter.get().at().kgPerHa()
        || longer.get().days() < shorter.get().days()) {
      entry
          .problems()
          .add(
              soil.mark("residualHigh"),
              "the residual at the high rate is below that at the low rate",
              "give the high rate at least the rate and the days of the low one");
    }
    return Optional.of(
        new Residual(
            shorter.get().at(),
            shorter.get().days(),
            longer.get().at(),
            longer.get().days(),
            rainMm));
  }

  private static Optional<Length> length(
      Entry entry, Node node, ActiveRates rates, String example) {
    return entry
        .map(
            example,
            m ->
                Optional.of(
                    new Length(
                        m.require(
                            "at", rates.one(), rates.example(), Rate.lbPerAcre(0, rates.basis())),
                        m.require("days", IngredientReader::lengthDays, "30", 1))))
        .apply(node);
  }

  private static double halfLife(String text) {
    double days = Texts.in(Unit.DAY, "40 days").parse(text);
    if (!(days > 0)) {
      throw new MeasureException(
          "'" + text + "' is no half-life; write days above zero, or 'none'");
    }
    return days;
  }

  private static int lengthDays(String text) {
    int days = Texts.bareDays(text);
    if (days == 0) {
      throw new MeasureException(
          "'" + text + "' is no length of a residual; write days above zero, or 'residual: none'");
    }
    return days;
  }

  private static Basis basis(String text) {
    return switch (Texts.oneOf(List.of("ai", "ae", "cation")).parse(text)) {
      case "ai" -> Basis.AI;
      case "ae" -> Basis.AE;
      default -> Basis.CATION;
    };
  }
}
