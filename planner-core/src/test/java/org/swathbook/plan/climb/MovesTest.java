package org.swathbook.plan.climb;

import static org.assertj.core.api.Assertions.assertThat;
import static org.swathbook.plan.climb.Invented.ACETOCHLOR;
import static org.swathbook.plan.climb.Invented.CHOLINE;
import static org.swathbook.plan.climb.Invented.CLETHODIM;
import static org.swathbook.plan.climb.Invented.GLUFOSINATE;
import static org.swathbook.plan.climb.Invented.METRIBUZIN;
import static org.swathbook.plan.climb.Invented.MORE_GLUFOSINATE;
import static org.swathbook.plan.climb.Invented.PLANTING;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.PlanSpace;
import org.swathbook.plan.draft.Stop;

/** All that is one step away from a draft, named one by one. */
class MovesTest {
  /** From the day of planting: one and two days, and up to four steps of three days. */
  private static final int[] NEAR_PLANTING = {18, 21, 24, 27, 28, 29, 31, 32, 33, 36, 39, 42};

  private static Stop stop(int date, Integer... options) {
    return new Stop(date, List.of(options));
  }

  private static Draft draft(Stop... stops) {
    return new Draft(List.of(stops));
  }

  private static List<Draft> moved(Integer... options) {
    List<Draft> out = new ArrayList<>();
    for (int date : NEAR_PLANTING) {
      out.add(draft(stop(date, options)));
    }
    return out;
  }

  private static List<Draft> onPlanting(Integer[]... tanks) {
    List<Draft> out = new ArrayList<>();
    for (Integer[] tank : tanks) {
      out.add(draft(stop(PLANTING, tank)));
    }
    return out;
  }

  private static Integer[] tank(Integer... options) {
    return options;
  }

  @Test
  void aDoseIsMoreLessOrAnotherAndAPassMovesOrGoes() {
    List<Draft> near = new ArrayList<>(moved(GLUFOSINATE));
    near.add(Draft.EMPTY);
    near.addAll(
        onPlanting(
            tank(MORE_GLUFOSINATE),
            tank(CHOLINE),
            tank(ACETOCHLOR),
            tank(METRIBUZIN),
            tank(CLETHODIM),
            tank(GLUFOSINATE, CHOLINE),
            tank(GLUFOSINATE, ACETOCHLOR),
            tank(GLUFOSINATE, METRIBUZIN),
            tank(GLUFOSINATE, CLETHODIM)));
    assertThat(Invented.ofSix().moves().of(draft(stop(PLANTING, GLUFOSINATE))))
        .containsExactlyInAnyOrderElementsOf(near);
  }

  /** Two products at most, and acetochlor refuses 2,4-D. */
  @Test
  void aFullTankExchangesOneForOneThatTheOtherTakes() {
    Moves moves = Invented.ofSix().products(2).mixing(Invented::refuses).moves();
    List<Draft> near = new ArrayList<>(moved(CHOLINE, CLETHODIM));
    near.add(Draft.EMPTY);
    near.addAll(
        onPlanting(
            tank(CHOLINE),
            tank(CLETHODIM),
            tank(GLUFOSINATE, CHOLINE),
            tank(MORE_GLUFOSINATE, CHOLINE),
            tank(METRIBUZIN, CHOLINE),
            tank(GLUFOSINATE, CLETHODIM),
            tank(MORE_GLUFOSINATE, CLETHODIM),
            tank(ACETOCHLOR, CLETHODIM),
            tank(METRIBUZIN, CLETHODIM)));
    assertThat(moves.of(draft(stop(PLANTING, CHOLINE, CLETHODIM))))
        .containsExactlyInAnyOrderElementsOf(near);
  }

  /** Metribuzin only up to planting: the pass with it moves no later, and not onto the other. */
  @Test
  void aPassMovesToWhereAllOfItIsAllowedAndNoOtherStands() {
    Moves moves =
        Invented.ofSix().allowing((o, date) -> o.index() != METRIBUZIN || date <= PLANTING).moves();
    Stop early = stop(24, CLETHODIM);
    Draft two = draft(early, stop(PLANTING, CHOLINE, METRIBUZIN));
    assertThat(moves.of(two))
        .filteredOn(d -> d.stops().size() == 2 && d.stops().get(0).equals(early))
        .filteredOn(d -> d.stops().get(1).options().equals(List.of(CHOLINE, METRIBUZIN)))
        .extracting(d -> d.stops().get(1).date())
        .containsExactlyInAnyOrder(27, 28, 29);
    assertThat(moves.of(two)).doesNotContain(two).doesNotHaveDuplicates();
  }

  /** Of some forty actives; what a dose is worth is its place in the list. */
  @Test
  void ofManyDosesTheTenThatDoMostAreTriedInExchange() {
    Invented field = Invented.ofAll().products(1).worth(MovesTest::lastDose);
    int last = field.space().options().size() - 1;
    Draft one = draft(stop(PLANTING, GLUFOSINATE));
    assertThat(exchanged(field, one))
        .containsExactlyInAnyOrderElementsOf(
            IntStream.rangeClosed(last - 9, last).boxed().toList());
    assertThat(exchanged(field.worth(d -> 0), one))
        .as("equal ones in their order")
        .hasSize(10)
        .allMatch(o -> o < 12);
  }

  private static double lastDose(Draft draft) {
    return draft.stops().stream()
        .flatMap(s -> s.options().stream())
        .mapToInt(o -> o)
        .max()
        .orElse(0);
  }

  private static List<Integer> exchanged(Invented field, Draft one) {
    PlanSpace space = field.space();
    return field.moves().of(one).stream()
        .flatMap(d -> d.stops().stream())
        .filter(s -> s.date() == PLANTING)
        .flatMap(s -> s.options().stream())
        .filter(o -> !space.sameActive(o, GLUFOSINATE))
        .toList();
  }

  /** One dose of a choice comes into the pass, beside all that it holds or in the place of one. */
  @Test
  void whatIsToBeMendedTakesOneOfAChoice() {
    Stop other = stop(50, CLETHODIM);
    Draft two = draft(stop(PLANTING, GLUFOSINATE, CHOLINE), other);
    List<Draft> wanted =
        List.of(
            draft(stop(PLANTING, GLUFOSINATE, CHOLINE, METRIBUZIN), other),
            draft(stop(PLANTING, CHOLINE, METRIBUZIN), other),
            draft(stop(PLANTING, GLUFOSINATE, METRIBUZIN), other),
            draft(stop(PLANTING, MORE_GLUFOSINATE, CHOLINE), other));
    assertThat(Invented.ofSix().moves().adding(two, 0, List.of(METRIBUZIN, MORE_GLUFOSINATE)))
        .containsExactlyInAnyOrderElementsOf(wanted);
    assertThat(Invented.ofSix().moves().adding(two, 0, List.of())).isEmpty();
  }
}
