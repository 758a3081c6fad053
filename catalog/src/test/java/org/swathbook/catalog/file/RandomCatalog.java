package org.swathbook.catalog.file;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Competition;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Emergence;
import org.swathbook.catalog.HeightCurve;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Interaction;
import org.swathbook.catalog.Movement;
import org.swathbook.catalog.PouringOrder;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.Protection;
import org.swathbook.catalog.ProtectiveItem;
import org.swathbook.catalog.Residual;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.RotationRow;
import org.swathbook.catalog.SeedBiology;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.Slug;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.StateLimit;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Terms;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.Weed;
import org.swathbook.catalog.WeedId;
import org.swathbook.catalog.WeedKind;
import org.swathbook.measure.Basis;
import org.swathbook.measure.Concentration;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
import org.swathbook.measure.Unit;

/** One random catalog that a reader could have made. */
final class RandomCatalog {
  private static final List<Unit> VOLUMES =
      List.of(Unit.FLUID_OUNCE, Unit.PINT, Unit.QUART, Unit.GALLON, Unit.LITRE, Unit.MILLILITRE);
  private static final List<Unit> MASSES =
      List.of(Unit.OUNCE_WEIGHT, Unit.POUND, Unit.GRAM, Unit.KILOGRAM);

  private final Draw draw;
  private final List<Crop> crops;
  private final List<String> ingredientNames;
  private final List<Ingredient> ingredients = new ArrayList<>();
  private final List<Weed> weeds = new ArrayList<>();

  private RandomCatalog(Random random) {
    this.draw = new Draw(random);
    RandomCrops randomCrops = new RandomCrops(draw);
    this.crops = draw.list(1, 3, randomCrops::crop);
    this.ingredientNames = draw.list(1, 3, draw::name);
    Set<String> codes = new LinkedHashSet<>(draw.list(1, 3, this::eppo));
    codes.forEach(c -> weeds.add(weed(c, randomCrops)));
    ingredientNames.forEach(n -> ingredients.add(ingredient(n)));
  }

  static Catalog of(Random random) {
    RandomCatalog r = new RandomCatalog(random);
    Map<List<Object>, Response> responses = new LinkedHashMap<>();
    for (Response x : r.draw.list(0, 5, r::response)) {
      responses.put(List.of(x.weed(), x.ingredient(), x.timing()), x);
    }
    return new Catalog(
        r.ingredients,
        r.draw.list(0, 3, r::product),
        r.weeds,
        r.crops,
        responses.values(),
        r.draw.list(0, 3, r::interaction));
  }

  private List<IngredientId> ids() {
    return ingredientNames.stream().map(IngredientId::of).toList();
  }

  private List<CropId> cropIds() {
    return crops.stream().map(Crop::id).toList();
  }

  private Ingredient ingredient(String name) {
    Basis basis = draw.pick(Basis.AI, Basis.AE, Basis.CATION);
    RandomTerms randomTerms = new RandomTerms(draw, cropIds(), ids());
    Terms terms = randomTerms.ofIngredient();
    RandomUses randomUses =
        new RandomUses(draw, basis, randomTerms, weeds.stream().map(Weed::id).toList());
    List<Use> uses =
        draw.list(
            0,
            4,
            () ->
                randomUses.use(
                    draw.chance(0.8) ? Optional.of(draw.pick(crops)) : Optional.empty(), terms));
    Map<CropId, Stated<List<RotationRow>>> rotation = new LinkedHashMap<>();
    draw.some(cropIds(), 0).forEach(c -> rotation.put(c, draw.known(randomUses::rotation)));
    Stated<Residual> residual = draw.stated("residual length", () -> residual(basis));
    boolean usesComplete = draw.chance(0.5);
    Optional<String> incorporation = draw.maybe(draw::text);
    List<String> kept = new ArrayList<>(List.of("name", "site", "family", "movement", "capGroup"));
    incorporation.ifPresent(t -> kept.add("incorporate"));
    if (usesComplete || draw.chance(0.3)) {
      kept.add("usesComplete");
    }
    if (residual.find().isPresent()) {
      kept.addAll(List.of("soil.residualHigh", "soil.activatingRain"));
    }
    for (int i = 0; i < uses.size(); i++) {
      if (uses.get(i).refused()) {
        kept.add("uses." + (i + 1));
      }
      if (!uses.get(i).registration().states().equals(StateLimit.ANYWHERE)) {
        kept.add("uses." + (i + 1) + ".state");
      }
    }
    return new Ingredient(
        IngredientId.of(name),
        name,
        draw.names(2),
        Site.of(draw.whole(0, 40)),
        draw.text(),
        basis,
        draw.pick(Movement.values()),
        draw.text(),
        residual,
        draw.stated("half-life in soil", () -> draw.quantity(300, Unit.DAY, Unit.DAY, Unit.HOUR)),
        uses,
        usesComplete,
        rotation,
        terms,
        incorporation,
        sources(kept),
        draw.date());
  }

  private Map<String, Source> sources(List<String> paths) {
    Map<String, Source> out = new LinkedHashMap<>();
    paths.forEach(p -> out.put(p, draw.source()));
    return out;
  }

  private Residual residual(Basis basis) {
    Rate low = draw.rate(basis);
    int days = draw.whole(1, 60);
    return new Residual(
        low, days, draw.above(low), days + draw.whole(0, 60), draw.chance(0.2) ? 0 : draw.rainMm());
  }

  private Product product() {
    String name = draw.name();
    boolean liquid = draw.chance(0.6);
    List<Unit> units = liquid ? VOLUMES : MASSES;
    List<Product.Content> contents = new ArrayList<>();
    draw.some(ingredients, 1).forEach(i -> contents.add(content(i, liquid)));
    Rate spoken = new Rate(1, draw.pick(units), draw.pick(Unit.ACRE, Unit.HECTARE), Basis.PRODUCT);
    boolean stepped = draw.chance(0.7);
    Rate step =
        stepped
            ? new Rate(draw.number(0.01, 5), draw.pick(units), Unit.ACRE, Basis.PRODUCT)
            : spoken;
    Optional<Quantity> size =
        draw.maybe(() -> new Quantity(draw.number(0.1, 30), draw.pick(units)));
    Optional<Product.Label> label = draw.maybe(() -> new Product.Label(draw.text(), draw.date()));
    List<String> kept = new ArrayList<>(List.of("name", "formulation", "unit"));
    if (stepped) {
      kept.add("step");
    }
    size.ifPresent(s -> kept.add("package"));
    label.ifPresent(l -> kept.add("label"));
    Optional<PouringOrder> order = draw.maybe(this::order);
    order.ifPresent(o -> kept.add("order"));
    return new Product(
        new ProductId(Slug.of(name)),
        name,
        contents,
        draw.pick("SL", "EC", "WG", "CS"),
        spoken,
        step,
        size,
        label,
        order,
        draw.stated("protective equipment", this::protection),
        draw.maybe(draw::text).orElse(""),
        draw.source(),
        sources(kept));
  }

  private PouringOrder order() {
    List<PouringOrder.Poured> others =
        List.of(
            new PouringOrder.Poured.Formulation("EC"),
            new PouringOrder.Poured.Formulation("WG"),
            new PouringOrder.Poured.OfKind(draw.pick(AdjuvantKind.values())),
            new PouringOrder.Poured.Holding(draw.pick(ids())));
    Set<PouringOrder.Poured> before = draw.some(others, 1);
    return new PouringOrder(
        before, draw.some(others.stream().filter(o -> !before.contains(o)).toList(), 0));
  }

  private Protection protection() {
    return new Protection(
        draw.some(List.of(ProtectiveItem.values()), 1),
        draw.some(List.of(ProtectiveItem.values()), 0));
  }

  private Product.Content content(Ingredient of, boolean liquid) {
    Basis basis = of.rateBasis();
    String amount = ExactText.number(draw.number(0.01, liquid ? 10 : 90));
    String text =
        liquid
            ? amount + " " + draw.pick("lb ", "g ") + basis.symbol() + draw.pick("/gal", "/L")
            : amount + draw.pick(" %", "%");
    return new Product.Content(of.id(), Concentration.parse(text, basis));
  }

  private String eppo() {
    StringBuilder code = new StringBuilder();
    for (int i = 0; i < 5; i++) {
      code.append("ABCDEFGHIJKLMNOPQRSUVWXYZ0123456789".charAt(draw.whole(0, 34)));
    }
    return code.toString();
  }

  private Weed weed(String code, RandomCrops randomCrops) {
    RandomCrops.Clock clock = randomCrops.clock();
    double at10 = draw.number(1, 100);
    double at50 = at10 + draw.number(1, 500);
    double at90 = at50 + draw.number(1, 900);
    double until = at90 + draw.number(1, 900);
    Optional<Emergence.Tail> tail =
        draw.maybe(
            () -> new Emergence.Tail(Unit.PERCENT.toSi(draw.number(0, 10)), clock.sum(until)));
    Map<CropId, Competition> competition = new LinkedHashMap<>();
    draw.some(cropIds(), 0)
        .forEach(
            c -> competition.put(c, new Competition(lossPerPlant(), draw.share(), draw.source())));
    List<String> kept =
        new ArrayList<>(
            List.of("name", "latin", "kind", "family", "genus", "emergence.degreeDays"));
    tail.ifPresent(t -> kept.add("emergence.tail"));
    OptionalDouble waterBase =
        draw.chance(0.3) ? OptionalDouble.of(draw.number(-50, -0.1)) : OptionalDouble.empty();
    waterBase.ifPresent(b -> kept.add("emergence.water"));
    kept.addAll(List.of("height.base", "height.r", "height.lag", "height.max"));
    kept.addAll(List.of("seed.emerged", "seed.survival", "seed.selfing"));
    return new Weed(
        new WeedId(code),
        draw.name(),
        draw.text(),
        draw.names(2),
        draw.pick(WeedKind.values()),
        draw.text().toLowerCase(Locale.ROOT),
        draw.text().toLowerCase(Locale.ROOT),
        new Emergence(
            clock.clock(),
            draw.chance(0.5) ? MonthDay.of(1, 1) : draw.monthDay(),
            clock.sum(at10),
            clock.sum(at50),
            clock.sum(at90),
            tail,
            waterBase,
            draw.source()),
        new HeightCurve(
            draw.number(-5, 15),
            draw.quantity(1, Unit.CENTIMETRE, Unit.CENTIMETRE, Unit.INCH, Unit.MILLIMETRE),
            draw.number(0.001, 1),
            draw.number(0.1, 300),
            draw.heightCm(),
            draw.source()),
        competition,
        new SeedBiology(
            draw.share(), draw.share(), draw.number(0.1, 1_000_000), draw.share(), draw.source()),
        sources(kept),
        draw.date());
  }

  private double lossPerPlant() {
    double percent = draw.number(0.01, 200);
    Unit area = draw.pick(Unit.SQUARE_METRE, Unit.SQUARE_METRE, Unit.SQUARE_FOOT, Unit.ACRE);
    return Unit.PERCENT.toSi(percent) * area.toSi(1);
  }

  private Response response() {
    List<Double> percents = draw.list(3, 3, () -> draw.number(0, 100)).stream().sorted().toList();
    Response.Timing timing = draw.pick(Response.Timing.values());
    OptionalDouble height =
        timing == Response.Timing.PRE || draw.chance(0.3)
            ? OptionalDouble.empty()
            : Draw.box(Unit.CENTIMETRE.fromSi(Unit.INCH.toSi(draw.number(0.1, 40))));
    return new Response(
        draw.pick(weeds).id(),
        draw.pick(ids()),
        timing,
        percents.get(1),
        percents.get(0),
        percents.get(2),
        height,
        draw.chance(0.2) ? Source.NOT_GIVEN : new Source(cell()),
        draw.pick("high", "medium", "low"));
  }

  /** A text that a cell of a table can hold: no blanks at its ends, no-break ones among them. */
  private String cell() {
    return ("x" + draw.text() + draw.pick(",", "\"", "\n", "") + "x").replace("\u0007", "");
  }

  private Interaction interaction() {
    Interaction.Side one = side();
    Interaction.Side other = side();
    while (other.equals(one)) {
      other = side();
    }
    Optional<WeedKind> kind = draw.maybe(() -> draw.pick(WeedKind.values()));
    return new Interaction(
        one,
        other,
        kind.isPresent() ? Set.of() : draw.some(weeds.stream().map(Weed::id).toList(), 1),
        kind,
        draw.pick(Interaction.Kind.values()),
        draw.pick(one, other),
        draw.maybe(this::shares),
        draw.maybe(this::unless),
        draw.maybe(draw::text).orElse(""),
        draw.source());
  }

  private Interaction.Side side() {
    if (draw.chance(0.5)) {
      return new Interaction.Side(
          Optional.of(draw.pick(ids())), Optional.empty(), Optional.empty());
    }
    return new Interaction.Side(
        Optional.empty(),
        Optional.of(site()),
        draw.chance(0.3) ? Optional.of(site()) : Optional.empty());
  }

  private Site site() {
    return draw.pick(ingredients).site();
  }

  /** Of up to six decimals, which is as far as a range is read. */
  private Interaction.Shares shares() {
    double low = draw.decimal(0, 50, 4);
    double high = draw.chance(0.5) ? low : draw.decimal(50, 100, 4);
    return new Interaction.Shares(Unit.PERCENT.toSi(six(low)), Unit.PERCENT.toSi(six(high)));
  }

  private static double six(double value) {
    return Math.rint(value * 1e6) / 1e6;
  }

  private Interaction.Unless unless() {
    Ingredient i = draw.pick(ingredients);
    return new Interaction.Unless(i.id(), draw.rate(i.rateBasis()));
  }
}
