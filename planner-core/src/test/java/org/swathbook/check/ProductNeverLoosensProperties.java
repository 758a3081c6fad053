package org.swathbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import net.jqwik.api.statistics.StatisticsReport;
import org.swathbook.book.Field;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.Timings;
import org.swathbook.growth.UseFinder;
import org.swathbook.measure.Concentration;
import org.swathbook.measure.Rate;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.rules.Finding;
import org.swathbook.rules.LabelUses;
import org.swathbook.rules.Severity;

/**
 * A product has no limits of its own: it brings actives, and each is judged as if it had come
 * alone. So whatever an active by itself is refused for – at the same weight, on the same day, in
 * the same formulation, with the same journal behind it – it is refused for in every product that
 * brings it, however many others come with it. Laws on premixes drawn from the starter catalog for
 * the fields of the demo book.
 */
class ProductNeverLoosensProperties {
  private static final Catalog CATALOG = DemoFields.BOOK.catalog();
  private static final List<Ingredient> ACTIVES = List.copyOf(CATALOG.ingredients());
  private static final List<String> FORMULATIONS =
      CATALOG.products().stream().map(Product::formulation).distinct().toList();

  @Property(edgeCases = EdgeCasesMode.NONE)
  @StatisticsReport(StatisticsReport.StatisticsReportMode.OFF)
  void whatIsRefusedAloneIsRefusedInAnyProduct(
      @ForAll @IntRange(min = 0, max = 11) int place,
      @ForAll @IntRange(min = -30, max = 60) int days,
      @ForAll long seed) {
    Field field = field(place);
    PassTiming timing = timing(field, days);
    Dose dose = dose(field, new Random(seed));

    Set<String> inProduct = blocked(field, timing, Mix.of(List.of(dose)));
    Set<String> alone = new TreeSet<>();
    for (ActiveDose active : dose.actives()) {
      alone.addAll(blocked(field, timing, Mix.of(List.of(alone(dose, active)))));
    }

    assertThat(inProduct).containsAll(alone);
    Statistics.label("an active alone is")
        .collect(alone.isEmpty() ? "allowed" : "refused")
        .coverage(
            c -> {
              c.check("allowed").percentage(p -> p > 0);
              c.check("refused").percentage(p -> p >= 30);
            });
  }

  /**
   * The use rules see no difference at all between a premix and the same tank of single products.
   */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void aPremixIsTheTankOfItsParts(
      @ForAll @IntRange(min = 0, max = 11) int place,
      @ForAll @IntRange(min = -30, max = 60) int days,
      @ForAll long seed) {
    Field field = field(place);
    PassTiming timing = timing(field, days);
    Dose dose = dose(field, new Random(seed));
    List<Dose> parts = dose.actives().stream().map(a -> alone(dose, a)).toList();

    assertThat(blocked(field, timing, Mix.of(List.of(dose))))
        .isEqualTo(blocked(field, timing, Mix.of(parts)));
  }

  /** What the planner may draw on: the uses that stay open shrink as more of an active comes. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void moreOfAnActiveOpensNoUse(
      @ForAll @IntRange(min = 0, max = 11) int place,
      @ForAll long seed,
      @ForAll @DoubleRange(min = 1, max = 5) double more) {
    Field field = field(place);
    Dose dose = dose(field, new Random(seed));
    String formulation = dose.product().formulation();
    for (ActiveDose active : dose.actives()) {
      Ingredient i = active.ingredient();
      assertThat(UseFinder.open(i, formulation, field, active.kgPerHa()))
          .containsAll(UseFinder.open(i, formulation, field, active.kgPerHa() * more));
    }
  }

  /** Two products that bring the same active are added up: each alone may pass, both may not. */
  @Example
  void whatTwoProductsBringIsAddedUp() {
    Field corn =
        DemoFields.BOOK.fields().stream()
            .filter(f -> f.crop().value().equals("corn"))
            .findFirst()
            .orElseThrow();
    PassTiming planting = timing(corn, 0);
    Ingredient atrazine = CATALOG.findIngredient("atrazine").orElseThrow();
    Dose half = dose(List.of(atrazine), "SC", new double[] {1.5}, true);

    assertThat(blocked(corn, planting, Mix.of(List.of(half)))).isEmpty();
    assertThat(blocked(corn, planting, Mix.of(List.of(half, half)))).containsExactly("atrazine");
  }

  private static Field field(int place) {
    return DemoFields.BOOK.fields().get(place % DemoFields.BOOK.fields().size());
  }

  private static PassTiming timing(Field field, int days) {
    return Timings.at(DemoFields.traces(field), field.plantDate().plusDays(days));
  }

  /** Actives that some rule of uses or sequences blocks. */
  private static Set<String> blocked(Field field, PassTiming timing, Mix mix) {
    Set<String> blocked = new TreeSet<>();
    for (Finding f : DemoFields.findings(field, timing, mix).sorted()) {
      if (f.severity() == Severity.BLOCK) {
        blocked.add(f.about().ingredient().orElseThrow().value());
      }
    }
    return blocked;
  }

  /**
   * A product of up to four actives at rates from a fifth of what a use allows to a fifth above it.
   */
  private static Dose dose(Field field, Random random) {
    List<Ingredient> ofTheCrop =
        ACTIVES.stream().filter(i -> !LabelUses.inCrop(i, field).isEmpty()).toList();
    List<Ingredient> from = random.nextInt(5) == 0 ? ACTIVES : ofTheCrop;
    Set<Ingredient> some = new LinkedHashSet<>();
    Ingredient first = from.get(random.nextInt(from.size()));
    some.add(first);
    if (random.nextInt(3) == 0) {
      // Another form of the same parent shares its caps and counts.
      ACTIVES.stream().filter(i -> i.capGroup().equals(first.capGroup())).forEach(some::add);
    }
    for (int i = random.nextInt(3); i > 0; i--) {
      some.add(from.get(random.nextInt(from.size())));
    }
    List<Ingredient> actives = List.copyOf(some).subList(0, Math.min(4, some.size()));
    double[] pounds =
        actives.stream().mapToDouble(i -> (0.2 + random.nextDouble()) * usual(i)).toArray();
    String formulation = FORMULATIONS.get(random.nextInt(FORMULATIONS.size()));
    // So much of a strong active leaves no room for a carrier in ten pounds.
    boolean dry = random.nextBoolean() && actives.stream().allMatch(i -> usual(i) < 2.5);
    return dose(actives, formulation, pounds, !dry);
  }

  /** Each active at so many pounds per acre. */
  private static Dose dose(
      List<Ingredient> actives, String formulation, double[] pounds, boolean liquid) {
    List<Product.Content> contents = new ArrayList<>();
    for (int i = 0; i < actives.size(); i++) {
      Ingredient active = actives.get(i);
      // One gallon, or ten pounds, of the product brings just that.
      String strength = liquid ? plain(pounds[i]) + " lb/gal" : plain(10 * pounds[i]) + " %";
      contents.add(
          new Product.Content(active.id(), Concentration.parse(strength, active.rateBasis())));
    }
    Rate rate = Rate.parse(liquid ? "1 gal/acre" : "10 lb/acre");
    return Doses.ofProduct(CATALOG, product(contents, formulation, rate), rate);
  }

  private static String plain(double value) {
    return new BigDecimal(value).setScale(6, RoundingMode.HALF_UP).toPlainString();
  }

  private static double usual(Ingredient active) {
    return active.uses().stream()
        .flatMap(u -> u.rates().find().stream())
        .flatMap(List::stream)
        .flatMap(r -> r.rates().stream())
        .mapToDouble(r -> r.high().lbPerAcre())
        .findFirst()
        .orElse(1);
  }

  private static Product product(List<Product.Content> contents, String formulation, Rate rate) {
    return new Product(
        new ProductId("drawn"),
        "drawn",
        contents,
        formulation,
        Rate.parseUnit(rate.unitText()),
        Rate.parseUnit(rate.unitText()),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Stated.unknown("protective equipment"),
        "",
        new Source("default, drawn for a test"),
        Map.of());
  }

  /** One of the actives at the same weight, in a product that holds nothing else. */
  private static Dose alone(Dose dose, ActiveDose active) {
    IngredientId id = active.ingredient().id();
    Product single =
        product(
            List.of(dose.product().find(id).orElseThrow()),
            dose.product().formulation(),
            dose.rate());
    return new Dose(single, dose.rate(), List.of(active), false);
  }
}
