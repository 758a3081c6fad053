package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropStage;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Product;
import org.swathbook.measure.Basis;
import org.swathbook.measure.Rate;
import org.swathbook.measure.Unit;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Anchor;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.testing.DemoBook;

/** What is written reads back to the same program, to the last bit. */
class ProgramRoundTripProperties {
  private static final Book BOOK = DemoBook.BOOK;
  private static final List<Product> PRODUCTS = List.copyOf(BOOK.catalog().products());

  @Property(edgeCases = EdgeCasesMode.NONE)
  void readsBackTheSame(@ForAll("programs") Program program) {
    String text = ProgramWriter.text(program);
    assertThat(ProgramReader.read("p.yaml", text.getBytes(StandardCharsets.UTF_8), BOOK))
        .isEqualTo(program);
    assertThat(text).startsWith("# The label is the law");
  }

  @Property
  void heightsToTheLastBit(@ForAll("heights") double cm) {
    Anchor at = new Anchor.WhenWeedIs(BOOK.weeds().get(0).weed().id(), cm);
    Field field = BOOK.fields().get(0);
    Dose dose = Doses.ofProduct(BOOK.catalog(), PRODUCTS.get(0), PRODUCTS.get(0).spoken());
    Program p = new Program("x", field.id(), List.of(new Pass(at, Mix.of(List.of(dose)))));
    assertThat(
            ProgramReader.read(
                "p.yaml", ProgramWriter.text(p).getBytes(StandardCharsets.UTF_8), BOOK))
        .isEqualTo(p);
  }

  @Provide
  Arbitrary<Double> heights() {
    return Arbitraries.oneOf(
        Arbitraries.doubles().between(1e-6, 500).ofScale(12),
        Arbitraries.integers().between(1, 400).map(tenths -> tenths / 10.0 * 2.54));
  }

  @Provide
  Arbitrary<Program> programs() {
    Arbitrary<String> names =
        Arbitraries.strings()
            .withCharRange(' ', '\uD7FF')
            .withChars('"', '\\', '#', ':', '\n', '\t', '\u0085', '\uFEFF', '\uFFFD')
            .ofMinLength(1)
            .ofMaxLength(40)
            .filter(n -> !n.isBlank());
    return Arbitraries.of(BOOK.fields())
        .flatMap(
            field ->
                Combinators.combine(names, passes(field).list().ofMaxSize(5))
                    .as((name, passes) -> new Program(name, field.id(), inOrder(field, passes))));
  }

  /** Passes whose day is known without a model by that day, the others before them. */
  private static List<Pass> inOrder(Field field, List<Pass> passes) {
    return passes.stream()
        .sorted(
            Comparator.comparing(
                p ->
                    p.at() instanceof Anchor.OnDate d
                        ? d.date()
                        : p.at() instanceof Anchor.FromPlanting f
                            ? field.plantDate().plusDays(f.days())
                            : LocalDate.MIN))
        .toList();
  }

  private static Arbitrary<Pass> passes(Field field) {
    Arbitrary<Mix> mixes =
        Combinators.combine(
                doses().list().ofMinSize(1).ofMaxSize(5),
                adjuvants().list().ofMaxSize(3),
                Arbitraries.doubles().between(0.5, 60).ofScale(15).optional(0.7))
            .as(
                (doses, adjuvants, gallons) ->
                    new Mix(
                        doses,
                        adjuvants,
                        gallons.isPresent()
                            ? OptionalDouble.of(gallons.get())
                            : OptionalDouble.empty()));
    return Combinators.combine(anchors(field), mixes).as(Pass::new);
  }

  private static Arbitrary<Anchor> anchors(Field field) {
    Crop crop = BOOK.catalog().crop(field.crop());
    return Arbitraries.oneOf(
        Arbitraries.integers().between(-120, 150).map(Anchor.FromPlanting::new),
        Arbitraries.integers()
            .between(0, 425)
            .map(d -> new Anchor.OnDate(LocalDate.of(2026, 9, 1).plusDays(d))),
        Arbitraries.of(crop.stages()).map(CropStage::name).map(Anchor.AtStage::new),
        Combinators.combine(
                Arbitraries.of(List.copyOf(BOOK.catalog().weeds())),
                Arbitraries.doubles().between(0.001, 300).ofScale(14))
            .as((weed, cm) -> new Anchor.WhenWeedIs(weed.id(), cm)));
  }

  private static Arbitrary<Adjuvant> adjuvants() {
    return Combinators.combine(
            Arbitraries.of(AdjuvantKind.values()),
            Arbitraries.of(
                "8.5 lb/100 gal", "1 % v/v", "0.25 % v/v", "1 qt/acre", "as the label says"))
        .as((kind, rate) -> new Adjuvant(kind.spelling(), rate));
  }

  private static Arbitrary<Dose> doses() {
    // Up to what a reader still takes for a rate, in whatever unit.
    Arbitrary<Double> amounts = Arbitraries.doubles().between(1e-9, 1000).ofScale(17);
    Arbitrary<Unit> areas = Arbitraries.of(Unit.ACRE, Unit.HECTARE);
    return Combinators.combine(
            Arbitraries.of(PRODUCTS),
            amounts,
            areas,
            Arbitraries.of(true, false),
            Arbitraries.integers().between(0, 3))
        .as(ProgramRoundTripProperties::dose);
  }

  private static Dose dose(Product product, double amount, Unit area, boolean named, int unit) {
    Unit[] weights = {Unit.POUND, Unit.OUNCE_WEIGHT, Unit.GRAM, Unit.KILOGRAM};
    Unit[] volumes = {Unit.FLUID_OUNCE, Unit.PINT, Unit.QUART, Unit.LITRE};
    if (named && product.isSingle()) {
      Ingredient i = BOOK.catalog().ingredient(product.contents().get(0).ingredient());
      return Doses.ofIngredient(i, product, new Rate(amount, weights[unit], area, i.rateBasis()));
    }
    Unit spoken = (product.spoken().isVolume() ? volumes : weights)[unit];
    return Doses.ofProduct(BOOK.catalog(), product, new Rate(amount, spoken, area, Basis.PRODUCT));
  }
}
