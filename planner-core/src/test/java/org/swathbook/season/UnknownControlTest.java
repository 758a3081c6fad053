package org.swathbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.WeedId;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Anchor;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.testing.Fixtures;

/** Of which actives it is said that their control of a weed is not known. */
class UnknownControlTest {
  private static final WeedId PALMER = WeedId.of("AMAPA");
  private static final WeedId FOXTAIL = WeedId.of("SETFA");

  /** After control of any weed is needed no more, and before the harvest. */
  private static final int LATE = 125;

  /** The book, without what is known of Palmer amaranth and some active at some timings. */
  private static Book without(String active, Response.Timing... timings) {
    Book b = Fixtures.book();
    Catalog c = b.catalog();
    List<Response> left =
        c.responses().stream()
            .filter(
                r ->
                    !(r.weed().equals(PALMER)
                        && r.ingredient().equals(IngredientId.of(active))
                        && List.of(timings).contains(r.timing())))
            .toList();
    assertThat(left).hasSizeLessThan(c.responses().size());
    return new Book(
        b.name(),
        b.season(),
        new Catalog(c.ingredients(), c.products(), c.weeds(), c.crops(), left, c.interactions()),
        b.house(),
        b.crops(),
        b.passCost(),
        b.resprayExtra(),
        b.fields(),
        b.weeds(),
        b.journal(),
        b.pastSeasons(),
        b.prices(),
        b.stations(),
        b.notes());
  }

  private static List<String> unknown(Book book, WeedId weed, int daysFromPlanting, Mix mix) {
    return unknown(book, weed, pass(daysFromPlanting, mix));
  }

  private static Pass pass(int daysFromPlanting, Mix mix) {
    LocalDate planted = Fixtures.field("ND-1").plantDate();
    return new Pass(new Anchor.Made(planted.plusDays(daysFromPlanting)), mix);
  }

  private static List<String> unknown(Book book, WeedId weed, Pass... made) {
    TraceSet traces = TraceBuilder.build(book, Fixtures.field("ND-1"));
    return SeasonWalk.walk(book, Kernel.of(book, traces), Sprays.program("ND-1", made))
        .weed(weed)
        .unknownActives();
  }

  @Test
  void aResidualOfUnknownControlIsNamedForThatWeedAlone() {
    Book book = without("metribuzin", Response.Timing.PRE);
    Mix metribuzin = Sprays.mix("metribuzin", 0.5);
    assertThat(unknown(book, PALMER, 0, metribuzin)).containsExactly("metribuzin");
    assertThat(unknown(book, FOXTAIL, 0, metribuzin)).isEmpty();
    assertThat(unknown(Fixtures.book(), PALMER, 0, metribuzin)).isEmpty();
  }

  /** What it would do to plants that come up when the crop has closed its rows nobody asks. */
  @Test
  void aResidualIsNotAskedWhenControlIsNeededNoMore() {
    Book book = without("metribuzin", Response.Timing.PRE);
    TraceSet traces = TraceBuilder.build(book, Fixtures.field("ND-1"));
    assertThat(traces.weeds().get(0).weed().id()).isEqualTo(PALMER);
    int latest = 0;
    int earliest = Integer.MAX_VALUE;
    for (int y = 0; y < traces.years().size(); y++) {
      int afterPlanting =
          traces.years().get(y).neededUntil(0) - traces.years().get(y).plantingDay();
      latest = Math.max(latest, afterPlanting);
      earliest = Math.min(earliest, afterPlanting);
    }
    assertThat(latest).isBetween(1, LATE - 1);
    Mix metribuzin = Sprays.mix("metribuzin", 0.5);
    assertThat(unknown(book, PALMER, latest + 1, metribuzin)).isEmpty();
    assertThat(unknown(book, PALMER, LATE, metribuzin)).isEmpty();
    // One year is enough, and its very last day.
    assertThat(earliest).isLessThan(latest);
    assertThat(unknown(book, PALMER, latest, metribuzin)).containsExactly("metribuzin");
  }

  @Test
  void whatALeafActiveDoesIsAskedWhereTheWeedStands() {
    Book book = without("glufosinate-ammonium", Response.Timing.POST, Response.Timing.BURNDOWN);
    Mix glufosinate = Sprays.mix("glufosinate-ammonium", 0.66);
    assertThat(unknown(book, PALMER, 25, glufosinate)).containsExactly("glufosinate-ammonium");
    assertThat(unknown(book, FOXTAIL, 25, glufosinate)).isEmpty();
    // In March nothing of it is up.
    assertThat(unknown(book, PALMER, -60, glufosinate)).isEmpty();
  }

  /** Atrazine works through both: what is known of one is counted, and the other is no gap then. */
  @Test
  void anActiveIsKnownByEitherOfItsWays() {
    Mix atrazine = Sprays.mix("atrazine", 1.0);
    Book leaves = without("atrazine", Response.Timing.PRE);
    Book soil = without("atrazine", Response.Timing.POST, Response.Timing.BURNDOWN);
    Book neither = without("atrazine", Response.Timing.values());
    assertThat(unknown(leaves, PALMER, 25, atrazine)).isEmpty();
    assertThat(unknown(soil, PALMER, 25, atrazine)).isEmpty();
    assertThat(unknown(neither, PALMER, 25, atrazine)).containsExactly("atrazine");
    // Before it is up only the soil counts.
    assertThat(unknown(leaves, PALMER, -60, atrazine)).containsExactly("atrazine");
    // Late only the leaves do.
    assertThat(unknown(soil, PALMER, LATE, atrazine)).containsExactly("atrazine");
    assertThat(unknown(leaves, PALMER, LATE, atrazine)).isEmpty();
  }

  /** Known in one pass, an active is not named for another; each is named once, in order. */
  @Test
  void actionsOfAllPassesAreTakenTogether() {
    Book book = without("atrazine", Response.Timing.POST, Response.Timing.BURNDOWN);
    Mix atrazine = Sprays.mix("atrazine", 1.0);
    assertThat(unknown(book, PALMER, pass(0, atrazine), pass(LATE, atrazine))).isEmpty();
    Book both = without("metribuzin", Response.Timing.PRE);
    Mix metribuzin = Sprays.mix("metribuzin", 0.25);
    assertThat(unknown(both, PALMER, pass(0, metribuzin), pass(20, metribuzin)))
        .containsExactly("metribuzin");
  }
}
