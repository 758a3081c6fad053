package org.swathbook.plan.climb;

import static org.assertj.core.api.Assertions.assertThat;
import static org.swathbook.plan.climb.Invented.CHOLINE;
import static org.swathbook.plan.climb.Invented.CLETHODIM;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Stop;
import org.swathbook.plan.draft.Walked;

/** Which passes stand around a program whose neighbours score as a test says. */
class AroundTest {
  private static final Stop EARLY = new Stop(20, List.of(CLETHODIM));
  private static final Stop LATE = new Stop(60, List.of(CLETHODIM));
  private static final Draft TWO = new Draft(List.of(EARLY, LATE));

  private static Surroundings around(Invented field, int mostPasses, int mostWalked) {
    return new Surroundings(
        field.search(new Steps(2, 1, true)),
        field.moves(),
        field.mending(),
        field.starts(0),
        field,
        mostPasses,
        mostWalked);
  }

  private static List<Stop> of(Invented field, int mostPasses, int mostWalked, int most) {
    Walked program = field.walked(TWO, List.of());
    return new ArrayList<>(around(field, mostPasses, mostWalked).of(List.of(program), most));
  }

  /** Only moves are worth anything, the later the more; the two places take turns. */
  @Test
  void ofEachPlaceTheMostPromisingInTurn() {
    Invented field =
        Invented.ofSix().allowing((o, date) -> o.index() == CLETHODIM).worth(AroundTest::dates);
    List<Stop> out = of(field, 2, 0, 6);
    assertThat(out.subList(0, 2)).containsExactly(EARLY, LATE);
    assertThat(out.subList(2, 6))
        .containsExactlyInAnyOrder(EARLY.on(32), LATE.on(72), EARLY.on(29), LATE.on(69));
    assertThat(Set.copyOf(out.subList(2, 4))).isEqualTo(Set.of(EARLY.on(32), LATE.on(72)));
    assertThat(of(field, 2, 0, 5)).isEqualTo(out.subList(0, 5));
    assertThat(of(field, 2, 0, 1_000)).as("twelve moves of each and no more").hasSize(2 + 2 * 12);
  }

  private static double dates(Draft d) {
    return d.stops().stream().mapToInt(Stop::date).sum();
  }

  /** A third pass may stand around two only where three are allowed. */
  @Test
  void noMorePassesThanTheFieldMayHave() {
    Invented field =
        Invented.ofSix().allowing((o, date) -> o.index() == CHOLINE || date == 20 || date == 60);
    Stop third = new Stop(45, List.of(CHOLINE));
    assertThat(of(field, 2, 0, 1_000)).doesNotContain(third);
    assertThat(of(field, 3, 0, 1_000)).contains(third);
  }

  /** Posts from day 9 on, where none of a climb's is added. */
  @Test
  void aPostAtTheFirstWeedsIsAmongThem() {
    Invented field = Invented.ofSix().allowing((o, date) -> o.index() == CHOLINE);
    assertThat(of(field, 3, 0, 1_000)).contains(new Stop(39, List.of(CHOLINE)));
  }

  /**
   * Of all doses of the field the ten that score best are tried in exchange, and acifluorfen is
   * none of them; it is what a program that lets Palmer amaranth escape may be mended by.
   */
  @Test
  void whatMendsABrokenRuleIsAmongThem() {
    Invented field =
        Invented.ofAll()
            .products(1)
            .breaking(d -> List.of(HouseRuleCheck.SEASON_CONTROL))
            .worth(AroundTest::lastDoses);
    Stop mended = LATE.without(CLETHODIM).with(acifluorfen(field));
    field.comingTo(Invented.palmer(80, 90, 5, List.of()));
    assertThat(of(field, 2, 0, 1_000)).contains(mended);
    field.comingTo(Invented.palmer(95, 90, 5, List.of()));
    assertThat(of(field, 2, 0, 1_000)).doesNotContain(mended);
    assertThat(field.asked).as("none walked").isEmpty();
  }

  private static double lastDoses(Draft d) {
    return d.stops().stream().mapToInt(s -> s.options().get(s.options().size() - 1)).sum();
  }

  private static int acifluorfen(Invented field) {
    return field.space().options().stream()
        .filter(o -> o.ingredient().value().equals("acifluorfen"))
        .findFirst()
        .orElseThrow()
        .index();
  }

  /** A score does not tell which neighbour breaks fewer rules; a walk does. */
  @Test
  void aBrokenProgramsNeighboursAreWalkedAndTheBestComesFirst() {
    Stop better = EARLY.on(19);
    Invented field =
        Invented.ofSix()
            .allowing((o, date) -> o.index() == CLETHODIM)
            .worth(AroundTest::dates)
            .breaking(
                d ->
                    d.stops().contains(better)
                        ? List.of()
                        : List.of(HouseRuleCheck.SEASON_CONTROL));
    List<Stop> walked = of(field, 2, 100, 9);
    assertThat(walked).contains(better);
    assertThat(field.asked).isNotEmpty();
    assertThat(of(field, 2, 0, 9)).as("none walked").doesNotContain(better);
    Invented met = Invented.ofSix().worth(AroundTest::dates);
    of(met, 2, 100, 9);
    assertThat(met.asked).as("meets the house rules").isEmpty();
  }
}
