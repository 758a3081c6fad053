package org.swathbook.plan.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.book.HouseRules;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Money;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.plan.choice.OptionMaker;
import org.swathbook.plan.choice.Strengths;
import org.swathbook.program.Program;
import org.swathbook.season.Kernel;
import org.swathbook.testing.Restated;

/**
 * Tanks for one more pass over soybean with Palmer amaranth, of four doses. Glufosinate and 2,4-D
 * work through leaves, S-metolachlor in the soil, clethodim on grasses alone. The house asks for
 * two sites through leaves, for two in the soil of a first layer and for one in that of a next.
 */
class AddedTanksTest {
  private static final Book BOOK = DemoCopy.inMemory();
  private static final TraceSet TRACES =
      TraceBuilder.build(BOOK, BOOK.findField("ND-1").orElseThrow());
  private static final LocalDate LAST = LocalDate.of(2027, 7, 16);
  private static final LocalDate WINTER = LocalDate.of(2027, 3, 1);
  private static final String GLUFOSINATE = "glufosinate-ammonium";
  private static final String CHOLINE = "2-4-d-choline";
  private static final String METOLACHLOR = "s-metolachlor";

  private static final List<DoseOption> FOUR = four();

  private static List<DoseOption> four() {
    List<DoseOption> out = new ArrayList<>();
    List<DoseOption> all = OptionMaker.make(BOOK, TRACES.field()).options();
    for (String active : List.of(GLUFOSINATE, "clethodim", CHOLINE, METOLACHLOR)) {
      DoseOption found =
          all.stream().filter(o -> o.ingredient().value().equals(active)).findFirst().orElseThrow();
      out.add(new DoseOption(out.size(), found.dose(), found.ingredient(), found.cost()));
    }
    return out;
  }

  private static List<SingleChange> added(
      LocalDate from, HouseRules house, ToDoubleFunction<SingleChange> score) {
    ChangeMaker maker =
        ChangeMaker.of(
            BOOK,
            TRACES,
            new Program("none", TRACES.field().id(), List.of()),
            new StandingPasses(BOOK, Kernel.of(BOOK, TRACES)),
            ChangeTerms.helping(from, List.of(), Money.ZERO),
            FOUR,
            WINTER);
    return new AddedTanks(TRACES, house, maker, FOUR, new Strengths(BOOK, TRACES, FOUR), score)
        .all();
  }

  private static List<String> actives(SingleChange change) {
    return change.in().stream().map(d -> d.actives().get(0).ingredient().id().value()).toList();
  }

  private static boolean holds(SingleChange change, String active) {
    return actives(change).contains(active);
  }

  private static final LocalDate POST = LocalDate.of(2027, 6, 5);

  private static List<List<String>> onPost(HouseRules house, ToDoubleFunction<SingleChange> score) {
    return added(POST, house, score).stream()
        .filter(c -> c.pass().equals(POST))
        .map(AddedTanksTest::actives)
        .toList();
  }

  /** Against leaves, then for the soil, then both; each tank once. */
  @Test
  void eachTankOnTheWayToTheSitesThatAreAskedCounts() {
    assertThat(onPost(BOOK.house(), c -> 0))
        .containsExactly(
            List.of(GLUFOSINATE),
            List.of(GLUFOSINATE, CHOLINE),
            List.of(METOLACHLOR),
            List.of(GLUFOSINATE, CHOLINE, METOLACHLOR));
    assertThat(onPost(BOOK.house(), c -> holds(c, CHOLINE) ? 5 : 0))
        .as("of those that bring as many sites the one that scores best")
        .containsExactly(
            List.of(CHOLINE),
            List.of(CHOLINE, GLUFOSINATE),
            List.of(METOLACHLOR),
            List.of(CHOLINE, GLUFOSINATE, METOLACHLOR));
  }

  @Test
  void aTankHoldsNoMoreThanTheHouseSaysAndNoMoreThanIsAsked() {
    assertThat(onPost(Restated.with(BOOK.house(), "maxProducts", 1), c -> 0))
        .containsExactly(List.of(GLUFOSINATE), List.of(METOLACHLOR));
    HouseRules one = Restated.with(BOOK.house(), "minFoliarSites", 1);
    assertThat(onPost(one, c -> 0))
        .containsExactly(
            List.of(GLUFOSINATE), List.of(METOLACHLOR), List.of(GLUFOSINATE, METOLACHLOR));
  }

  /** Every sixth day from the first that may change, and none after the last of the grid. */
  @Test
  void everyOpenDayHasItsTanks() {
    assertThat(added(POST, BOOK.house(), c -> 0))
        .extracting(SingleChange::pass)
        .contains(POST, POST.plusDays(6), LocalDate.of(2027, 6, 23))
        .allMatch(d -> !d.isBefore(POST));
    assertThat(added(LAST.plusDays(1), BOOK.house(), c -> 0)).isEmpty();
  }
}
