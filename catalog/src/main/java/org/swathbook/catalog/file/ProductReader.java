package org.swathbook.catalog.file;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.PouringOrder;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.Protection;
import org.swathbook.catalog.ProtectiveItem;
import org.swathbook.catalog.Slug;
import org.swathbook.catalog.Source;
import org.swathbook.measure.Basis;
import org.swathbook.measure.Concentration;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
import org.swathbook.measure.Unit;
import org.swathbook.source.MapReader;
import org.swathbook.source.Mark;
import org.swathbook.source.Node;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/** Reads a product. */
final class ProductReader {
  static final String FORMAT = "swathbook.product/1";

  private static final String CONTENT = "- {ingredient: glyphosate, concentration: 4.5 lb ae/gal}";

  private static final String PROTECTION =
      "protection: {handlers: [long-sleeves, shoes-and-socks]}";

  private static final TextParser<ProtectiveItem> ITEM =
      Texts.oneOf(ProtectiveItem.values(), ProtectiveItem::spelling);

  private final Names<IngredientId> ingredients;
  private final Map<IngredientId, Ingredient> read;

  ProductReader(Names<IngredientId> ingredients, Map<IngredientId, Ingredient> read) {
    this.ingredients = ingredients;
    this.read = read;
  }

  Optional<Product> read(CatalogFile file, MapReader map) {
    Entry entry = new Entry(file, map, FORMAT);
    String name = map.require("name", Texts::text, "glyphosate-4.5sl", "?");
    entry.checkFileName("name", Slug.of(name));
    List<Product.Content> contents = new ArrayList<>();
    for (Node item : map.requireList("contains", "[" + CONTENT.substring(2) + "]")) {
      MapReader.of(item, CONTENT, map.problems())
          .flatMap(this::content)
          .ifPresent(c -> add(contents, c, item.mark(), entry));
    }
    Rate spoken =
        map.require("unit", ProductReader::spoken, "fl oz/acre", Rate.parse("1 gal/acre"));
    Rate step = map.find("step", Rate::parse, "1 fl oz/acre").orElse(spoken);
    Optional<Quantity> size = map.find("package", Quantity::parse, "2.5 gal");
    entry.keepSources(
        map, Place.ROOT, "name", "formulation", "unit", "step", "package", "label", "order");
    Product product =
        new Product(
            new ProductId(file.stem()),
            name,
            contents,
            map.require("formulation", Formulations.CODE, "SL", "SL"),
            spoken,
            step,
            size,
            map.findMap("label", "{id: DEMO-1, reviewed: 2026-10-15}")
                .flatMap(ProductReader::label),
            map.findMap("order", "{before: [EC]}").flatMap(this::order),
            entry.stated(
                map,
                "protection",
                Place.ROOT,
                "protective equipment",
                entry.map(PROTECTION, m -> protection(m))),
            map.find("note", Texts::text, "invented").orElse(""),
            map.node().find("contains").isPresent()
                ? entry.source(Place.ROOT.then("contains"), map.mark("contains"))
                : Source.NOT_GIVEN,
            entry.kept());
    map.done();
    if (entry.isSound()) {
      checkDimensions(map, product);
    }
    return entry.isSound() ? Optional.of(product) : Optional.empty();
  }

  private Optional<Product.Content> content(MapReader m) {
    m.require("ingredient", "glyphosate");
    Optional<IngredientId> id = m.find("ingredient", ingredients.known(), "glyphosate");
    Optional<Ingredient> known = id.flatMap(i -> Optional.ofNullable(read.get(i)));
    m.require("concentration", "4.5 lb ae/gal");
    Optional<Concentration> strength =
        m.find("concentration", text -> concentration(text, known), "4.5 lb ae/gal");
    m.done();
    return id.flatMap(i -> strength.map(c -> new Product.Content(i, c)));
  }

  /** An empty list would read as if nothing were to be worn. */
  private static Optional<Protection> protection(MapReader m) {
    m.require("handlers", "[long-sleeves, shoes-and-socks]");
    List<ProtectiveItem> handlers = m.findAll("handlers", ITEM, "long-sleeves");
    List<ProtectiveItem> mixing = m.findAll("mixing", ITEM, "apron");
    return Optional.of(new Protection(new LinkedHashSet<>(handlers), new LinkedHashSet<>(mixing)));
  }

  private static Concentration concentration(String text, Optional<Ingredient> of) {
    Basis unwritten = Basis.PRODUCT;
    Concentration c = Concentration.parse(text, unwritten);
    if (of.isEmpty()) {
      return c;
    }
    Basis own = of.get().rateBasis();
    if (c.basis() == own || c.basis() == unwritten && (!c.isLiquid() || own == Basis.AI)) {
      return new Concentration(c.written(), c.kgPerLitre(), c.massShare(), own);
    }
    throw new MeasureException(
        "'"
            + text
            + (c.basis() == unwritten ? "' does not say of what" : "' counts " + c.basis().symbol())
            + "; "
            + of.get().name()
            + " counts "
            + own.symbol()
            + ": write for example '4.5 lb "
            + own.symbol()
            + "/gal'");
  }

  private static void add(
      List<Product.Content> contents, Product.Content next, Mark mark, Entry entry) {
    if (contents.stream().anyMatch(c -> c.ingredient().equals(next.ingredient()))) {
      entry.problems().add(mark, "'" + next.ingredient() + "' stands here twice", "keep one");
    } else if (contents.stream()
        .anyMatch(c -> c.concentration().isLiquid() != next.concentration().isLiquid())) {
      entry
          .problems()
          .add(
              mark,
              "one strength is by volume and one by weight",
              "give all per gallon, or all in percent");
    } else {
      contents.add(next);
    }
  }

  private static Rate spoken(String text) {
    Rate unit = Rate.parseUnit(text);
    if (unit.basis() != Basis.PRODUCT) {
      throw new MeasureException(
          "'" + text + "' is a unit of the active; write one of the product, as 'fl oz/acre'");
    }
    return unit;
  }

  private Optional<PouringOrder> order(MapReader m) {
    PouringOrder order =
        new PouringOrder(
            new LinkedHashSet<>(m.findAll("before", this::poured, "EC")),
            new LinkedHashSet<>(m.findAll("after", this::poured, "ammonium-sulfate")));
    if (m.node().entries().isEmpty()) {
      m.problems().add(m.mark(), "an order without 'before' or 'after'", "write '{before: [EC]}'");
    }
    order.before().stream()
        .filter(order.after()::contains)
        .findFirst()
        .ifPresent(
            both ->
                m.problems()
                    .add(
                        m.mark(),
                        "'" + both + "' is to go in both before and after this product",
                        "keep one of the two"));
    m.done();
    return Optional.of(order);
  }

  /** A formulation code, a kind of adjuvant, or an ingredient. */
  private PouringOrder.Poured poured(String text) {
    Optional<AdjuvantKind> kind = AdjuvantKind.find(text.strip());
    if (kind.isPresent()) {
      return new PouringOrder.Poured.OfKind(kind.get());
    }
    if (Formulations.isCode(text)) {
      return new PouringOrder.Poured.Formulation(Formulations.CODE.parse(text));
    }
    return new PouringOrder.Poured.Holding(ingredients.known().parse(text));
  }

  private static Optional<Product.Label> label(MapReader m) {
    TextParser<String> text = Texts::text;
    Optional<String> id = m.find("id", text, "DEMO-1");
    Optional<LocalDate> reviewed = m.find("reviewed", Texts::date, "2026-10-15");
    m.require("id", "DEMO-1");
    m.require("reviewed", "2026-10-15");
    m.done();
    return id.flatMap(i -> reviewed.map(r -> new Product.Label(i, r)));
  }

  private static void checkDimensions(MapReader map, Product product) {
    if (product.contents().isEmpty()) {
      map.problems()
          .add(map.mark("contains"), "the product holds no ingredient", "write '" + CONTENT + "'");
      return;
    }
    Concentration strength = product.contents().get(0).concentration();
    boolean liquid = strength.isLiquid();
    Measured kind =
        new Measured(
            map,
            liquid ? Dimension.VOLUME : Dimension.MASS,
            "' is no "
                + (liquid
                    ? "volume, but the product is a liquid"
                    : "weight, but the product is dry")
                + " by its strength of "
                + strength.written());
    Rate unit = product.spoken();
    String perArea = liquid ? "'fl oz/acre'" : "'oz weight/acre'";
    kind.check("unit", unit.unitText(), unit.unit(), unit.amount(), perArea);
    Rate step = product.step();
    if (map.has("step")) {
      kind.check("step", step.toString(), step.unit(), step.amount(), perArea);
    }
    String amount = liquid ? "'2.5 gal'" : "'20 lb'";
    product
        .packageSize()
        .ifPresent(q -> kind.check("package", q.toString(), q.unit(), q.value(), amount));
  }

  /** How a product is measured, with what to say of what does not fit. */
  private record Measured(MapReader map, Dimension wanted, String misfit) {
    void check(String key, String text, Unit unit, double amount, String example) {
      if (unit.dimension() != wanted) {
        map.problems().add(map.mark(key), "'" + text + misfit, "write for example " + example);
      } else if (!(amount > 0)) {
        map.problems().add(map.mark(key), "'" + text + "' is nothing", "write more than zero");
      }
    }
  }
}
