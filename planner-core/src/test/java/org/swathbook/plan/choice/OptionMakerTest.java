package org.swathbook.plan.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.Response;
import org.swathbook.plan.DemoCopy;

/** The doses of soybean with Palmer amaranth, giant foxtail and velvetleaf. */
class OptionMakerTest {
  private static final Book BOOK = DemoCopy.inMemory();
  private static final Field FIELD = BOOK.findField("ND-1").orElseThrow();
  private static final OptionMaker.Made MADE = OptionMaker.make(BOOK, FIELD);

  private static List<Double> amounts(String product) {
    return MADE.options().stream()
        .filter(o -> o.dose().product().id().equals(ProductId.of(product)))
        .map(o -> o.dose().rate().amount())
        .toList();
  }

  /**
   * Its label allows 0.585 to 0.66 lb/acre before soybean is up and 0.53 to 0.66 over it, at 2.34
   * lb/gal 32.0 and 29.0 to 36.1 fl oz: in whole ounces 32, 29 and 36.
   */
  @Test
  void theEndsOfEachRangeAreRoundedInwards() {
    assertThat(amounts("glufosinate-2.34sl")).containsExactly(29.0, 32.0, 36.0);
  }

  /** 31.50 $/gal, 128 fl oz to the gallon. */
  @Test
  void aDoseCostsItsShareOfAGallon() {
    assertThat(MADE.options())
        .filteredOn(o -> o.dose().product().id().equals(ProductId.of("glufosinate-2.34sl")))
        .allSatisfy(
            o ->
                assertThat(o.cost().dollars())
                    .isCloseTo(o.dose().rate().amount() / 128 * 31.50, within(0.006)));
  }

  @Test
  void optionsStandInTheirOrderAndHoldOneActive() {
    List<DoseOption> all = MADE.options();
    assertThat(all)
        .extracting(DoseOption::index)
        .isEqualTo(IntStream.range(0, all.size()).boxed().toList());
    assertThat(all)
        .allSatisfy(
            o -> {
              assertThat(o.dose().product().contents()).hasSize(1);
              assertThat(o.ingredient()).isEqualTo(o.dose().actives().get(0).ingredient().id());
            });
    assertThat(amounts("s-metolachlor-metribuzin-6.5ec")).isEmpty();
  }

  private static boolean controls(Book book, IngredientId active) {
    return book.weedsOf(FIELD.id()).stream()
        .anyMatch(
            w ->
                Arrays.stream(Response.Timing.values())
                    .flatMap(t -> book.catalog().response(w.weed().id(), active, t).find().stream())
                    .anyMatch(r -> r.emaxPct() >= 40));
  }

  /** Of giant foxtail alone what takes broadleaves is of no use; 40 % counts: default, ours. */
  @Test
  void whatControlsNoWeedOfTheFieldIsNamedAndLeftOut(@TempDir Path dir) {
    Book grass =
        new DemoCopy(dir.resolve("book"))
            .replaceAll("weeds.csv", "(?m)^ND-1,(?:AMAPA|ABUTH),.*\n", "")
            .load();
    OptionMaker.Made made = OptionMaker.make(grass, grass.findField("ND-1").orElseThrow());
    List<IngredientId> kept = made.options().stream().map(DoseOption::ingredient).toList();
    assertThat(kept)
        .contains(IngredientId.of("clethodim"))
        .doesNotContain(IngredientId.of("2-4-d-choline"))
        .allMatch(a -> controls(grass, a));
    assertThat(made.leftOut())
        .contains("2-4-d-choline-3.8sl: no known control of a weed of this field");
    assertThat(MADE.options())
        .extracting(DoseOption::ingredient)
        .filteredOn(a -> !kept.contains(a))
        .isNotEmpty()
        .noneMatch(a -> controls(grass, a));
  }

  @Test
  void whatHasNoPriceIsNamedAndLeftOut(@TempDir Path dir) {
    Book unpriced =
        new DemoCopy(dir.resolve("book"))
            .replaceAll("prices.csv", "(?m)^glufosinate-2\\.34sl,.*\n", "")
            .load();
    OptionMaker.Made made = OptionMaker.make(unpriced, unpriced.findField("ND-1").orElseThrow());
    assertThat(MADE.leftOut()).noneMatch(s -> s.contains("no price"));
    assertThat(made.leftOut()).contains("glufosinate-2.34sl: no price in prices.csv");
    assertThat(made.options())
        .hasSize(MADE.options().size() - 3)
        .noneMatch(o -> o.dose().product().id().equals(ProductId.of("glufosinate-2.34sl")));
  }

  /** 29 to 36 fl oz: no step of 50 lies between, and the most of the label stands. */
  @Test
  void whereNoStepLiesBetweenTheHighestRateIsTaken(@TempDir Path dir) {
    Book coarse =
        new DemoCopy(dir.resolve("book"))
            .changeCatalog("products/glufosinate-2.34sl.yaml", "step: 1 fl oz", "step: 50 fl oz")
            .load();
    OptionMaker.Made made = OptionMaker.make(coarse, coarse.findField("ND-1").orElseThrow());
    assertThat(made.options())
        .filteredOn(o -> o.dose().product().id().equals(ProductId.of("glufosinate-2.34sl")))
        .singleElement()
        .satisfies(
            o -> assertThat(o.dose().rate().amount()).isCloseTo(0.66 / 2.34 * 128, within(1e-6)));
  }

  @Test
  void aRemarkComesFirst() {
    OptionMaker.Made told = MADE.withLeftOut("asked aside");
    assertThat(told.leftOut().get(0)).isEqualTo("asked aside");
    assertThat(told.leftOut().subList(1, told.leftOut().size())).isEqualTo(MADE.leftOut());
    assertThat(told.options()).isEqualTo(MADE.options());
  }
}
