package org.swathbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.ScoutedCount;
import org.swathbook.book.Scouting;
import org.swathbook.book.WeedPressure;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.testing.Fixtures;

/** What is said at most of single passes, where it is nearly or all that they save. */
class GainBoundsTest {
  private static final Field ND1 = Fixtures.field("ND-1");
  private static final Field ND4 = Fixtures.field("ND-4");
  private static final double THIN = 1e-9;

  /** Weeds so thin that what they cost is a straight line. */
  private static Book thin(Field field) {
    Book book = Fixtures.book();
    for (WeedPressure w : book.weedsOf(field.id())) {
      book =
          book.withWeed(
              new WeedPressure(
                  w.field(),
                  w.weed(),
                  w.perM2() * THIN,
                  w.driver(),
                  w.biotypes(),
                  w.listed(),
                  w.note()));
    }
    return book;
  }

  private static Kernel kernel(Book book, Field field) {
    return Kernel.of(book, TraceBuilder.build(book, field, field.plantDate().plusDays(60)));
  }

  private static PreparedPass layer(Kernel kernel, int day) {
    return kernel.prepare(
        Sprays.mix("flumioxazin", 0.08, "metribuzin", 0.38),
        kernel.traces().field().plantDate().plusDays(day));
  }

  private static PreparedPass post(Kernel kernel, int day) {
    return kernel.prepare(
        Sprays.mix("glufosinate-ammonium", 0.66),
        kernel.traces().field().plantDate().plusDays(day));
  }

  private static double saved(Loads before, Loads after) {
    return before.score().lossDollarsPerAcre() - after.score().lossDollarsPerAcre();
  }

  /** Late removal costs less after a layer: what is said at most has to go by the lesser cost. */
  @Test
  void afterALayerALatePassSavesNoMoreThanIsSaid() {
    Kernel kernel = kernel(thin(ND1), ND1);
    PreparedPass layer = layer(kernel, 0);
    Loads before = kernel.loads(List.of(layer));
    List<Double> shares = new ArrayList<>();
    for (int day = 20; day <= 50; day += 5) {
      List<PreparedPass> both = List.of(layer, post(kernel, day));
      double most = GainBounds.of(kernel, both).mostSaved(1, before);
      shares.add(saved(before, kernel.loads(both)) / most);
    }
    assertThat(shares).allSatisfy(s -> assertThat(s).isLessThanOrEqualTo(1 + 1e-6));
    assertThat(shares).anySatisfy(s -> assertThat(s).isGreaterThan(0.97));
  }

  /** Of a pass by itself before planting nothing is left out and nothing added. */
  @Test
  void ofAPassBeforePlantingAllIsSaidAndNoMore() {
    Kernel kernel = kernel(thin(ND1), ND1);
    Loads none = kernel.loads(List.of());
    PreparedPass early = layer(kernel, -8);
    double saved = saved(none, kernel.loads(List.of(early)));
    assertThat(saved).isPositive();
    assertThat(GainBounds.of(kernel, List.of(early)).mostSaved(0, none) / saved)
        .isCloseTo(1, within(1e-6));
  }

  /**
   * Plants of a count that are killed before they have cost anything give back what the plants
   * whose place they took had cost: more than their own.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.5, 1, 3})
  void onTheDayOfACountAPassSavesNoMoreThanIsSaid(double timesTheModel) {
    int day = 35;
    Kernel kernel = kernel(counted(thin(ND4), ND4, day, timesTheModel), ND4);
    Loads none = kernel.loads(List.of());
    PreparedPass pass = post(kernel, day);
    assertThat(saved(none, kernel.loads(List.of(pass))))
        .isPositive()
        .isLessThanOrEqualTo(GainBounds.of(kernel, List.of(pass)).mostSaved(0, none));
  }

  private static Book counted(Book book, Field field, int day, double timesTheModel) {
    List<Scouting> rows = new ArrayList<>();
    for (WeedPressure w : book.weedsOf(field.id())) {
      rows.add(
          new Scouting(
              field.plantDate().plusDays(day),
              field.id(),
              "",
              Optional.of(w.weed().id()),
              Optional.empty(),
              Optional.of(new ScoutedCount(timesTheModel * w.perM2(), OptionalDouble.empty())),
              Optional.empty(),
              0));
    }
    return book.withScoutings(rows);
  }
}
