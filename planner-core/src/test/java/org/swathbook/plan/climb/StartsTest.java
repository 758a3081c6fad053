package org.swathbook.plan.climb;

import static org.assertj.core.api.Assertions.assertThat;
import static org.swathbook.plan.climb.Invented.ACETOCHLOR;
import static org.swathbook.plan.climb.Invented.CHOLINE;
import static org.swathbook.plan.climb.Invented.GLUFOSINATE;
import static org.swathbook.plan.climb.Invented.METRIBUZIN;
import static org.swathbook.plan.climb.Invented.PLANTING;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Stop;

/**
 * The house asks for two sites through leaves, for two in the soil of the first layer and for one
 * in that of the next. Where a dose is as good as another the first in the list is taken.
 */
class StartsTest {
  /** Two in the soil: sites 15 and 5. */
  private static final List<Integer> PRE = List.of(ACETOCHLOR, METRIBUZIN);

  /** Two through leaves and one of them in the soil: sites 10 and 5. */
  private static final List<Integer> POST = List.of(GLUFOSINATE, METRIBUZIN);

  /** Two through leaves, sites 10 and 4. */
  private static final List<Integer> LEAVES = List.of(GLUFOSINATE, CHOLINE);

  /** Two of each. */
  private static final List<Integer> ALL_FOUR = List.of(GLUFOSINATE, ACETOCHLOR, METRIBUZIN);

  private static Stop on(int daysFromPlanting, List<Integer> tank) {
    return new Stop(PLANTING + daysFromPlanting, tank);
  }

  private static Draft draft(Stop... stops) {
    return new Draft(List.of(stops));
  }

  private static List<Draft> usual() {
    Stop pre = on(0, PRE);
    return List.of(
        draft(pre, on(15, POST)),
        draft(pre, on(24, POST)),
        draft(pre, on(30, POST)),
        draft(pre, on(39, POST)),
        draft(on(-9, LEAVES), pre, on(30, POST)),
        draft(on(-9, ALL_FOUR), on(27, POST)),
        draft(on(-30, ALL_FOUR)),
        draft(on(-21, ALL_FOUR)),
        draft(on(-3, ALL_FOUR)));
  }

  @Test
  void beforeTheSeasonProgramsBeginInTheShapesOfAdvisers() {
    List<Draft> all = new ArrayList<>(usual());
    all.add(Draft.EMPTY);
    assertThat(Invented.ofSix().starts(0).all()).isEqualTo(all);
  }

  /** Day 59 is the first left; a week on is the last of the grid, and a second post falls on it. */
  @Test
  void inASeasonThatHasBegunAPassComesSoon() {
    List<Draft> all = new ArrayList<>(usual());
    all.add(draft(on(59, POST)));
    all.add(draft(on(59, LEAVES)));
    all.add(draft(on(59, POST), on(66, POST)));
    all.add(draft(on(66, POST)));
    all.add(draft(on(66, LEAVES)));
    all.add(Draft.EMPTY);
    assertThat(Invented.ofSix().starts(PLANTING + 59).all()).isEqualTo(all);
    assertThat(Invented.ofSix().apart(8).starts(PLANTING + 59).all())
        .as("the house asks for more than a week")
        .doesNotContain(draft(on(59, POST), on(66, POST)))
        .contains(draft(on(59, POST)), draft(on(66, POST)));
    List<Draft> nearTheEnd = Invented.ofSix().apart(6).starts(PLANTING + 60).all();
    assertThat(nearTheEnd.subList(usual().size(), nearTheEnd.size() - 1))
        .as("a week after day 60 is past the grid")
        .containsExactly(
            draft(on(60, POST)), draft(on(60, LEAVES)), draft(on(60, POST), on(66, POST)));
    assertThat(Invented.ofSix().starts(1).all())
        .contains(draft(on(-29, POST)), draft(on(-22, LEAVES)), draft(on(-15, POST), on(3, POST)));
  }

  @Test
  void theStartsThatScoreBestComeFirst() {
    Invented field = Invented.ofSix().worth(d -> d.stops().size());
    List<Draft> best = field.starts(0).best(2);
    assertThat(best).extracting(d -> d.stops().size()).containsExactly(3, 2);
    assertThat(field.starts(0).best(10)).isEqualTo(field.starts(0).all());
    assertThat(field.starts(0).best(9)).doesNotContain(Draft.EMPTY).hasSize(9);
  }

  /** On days over the season, whole tanks, each program once. */
  @Test
  void oneMorePassIsAWholeTank() {
    Draft pre = draft(on(0, PRE));
    List<Draft> more = new ArrayList<>();
    for (int day : new int[] {-21, -9}) {
      more.add(pre.with(on(day, LEAVES)));
      more.add(pre.with(on(day, POST)));
    }
    more.add(pre.with(on(-3, PRE)));
    for (int day : new int[] {15, 21, 27, 33, 39, 45, 51}) {
      more.add(pre.with(on(day, POST)));
      more.add(pre.with(on(day, LEAVES)));
    }
    assertThat(Invented.ofSix().apart(3).starts(0).withOneMorePass(pre, 15)).isEqualTo(more);
    assertThat(Invented.ofSix().apart(3).starts(0).withOneMorePass(pre, 52))
        .isEqualTo(more.subList(0, 5));
    more.remove(4);
    assertThat(Invented.ofSix().starts(0).withOneMorePass(pre, 15))
        .as("no pass three days before the one at planting")
        .isEqualTo(more);
    assertThat(Invented.ofSix().passes(1).starts(0).withOneMorePass(pre, 15))
        .as("one pass at most")
        .isEmpty();
    assertThat(Invented.ofSix().passes(2).starts(0).withOneMorePass(pre, 15)).isEqualTo(more);
    Draft late = draft(on(51, PRE));
    assertThat(Invented.ofSix().starts(0).withOneMorePass(late, 51))
        .as("that day has its pass")
        .allMatch(d -> d.stops().get(0).date() < PLANTING)
        .hasSize(5);
  }

  private static List<Integer> firstTank(Invented field) {
    return field.starts(0).all().get(0).stops().get(0).options();
  }

  private static List<Integer> post(Invented field) {
    List<Stop> stops = field.starts(0).all().get(0).stops();
    return stops.get(stops.size() - 1).options();
  }

  /** Sites first, then the score. */
  @Test
  void aTankIsFilledDoseByDoseWithWhatIsMissing() {
    assertThat(post(Invented.ofSix().worth(d -> holds(d, CHOLINE) ? 5 : 0)))
        .as("as many sites, and a better score")
        .containsExactly(CHOLINE, METRIBUZIN);
    assertThat(post(Invented.ofSix().worth(d -> holds(d, METRIBUZIN) ? -50 : 0)))
        .as("two at once, whatever the score")
        .containsExactly(GLUFOSINATE, METRIBUZIN);
    assertThat(post(Invented.ofSix().products(1)))
        .as("one product at most")
        .containsExactly(METRIBUZIN);
    assertThat(post(Invented.ofSix().legal(d -> !holds(d, METRIBUZIN))))
        .as("caps and intervals keep metribuzin out")
        .containsExactly(GLUFOSINATE, CHOLINE, ACETOCHLOR);
    assertThat(post(Invented.ofSix().legal(d -> !holds(d, METRIBUZIN)).mixing(Invented::refuses)))
        .as("acetochlor refuses 2,4-D")
        .containsExactly(GLUFOSINATE, CHOLINE);
    assertThat(firstTank(Invented.ofSix().allowing((o, date) -> o.index() == CHOLINE)))
        .as("nothing for the soil, so the post is the first pass")
        .containsExactly(CHOLINE);
  }

  private static boolean holds(Draft d, int option) {
    return d.stops().stream().anyMatch(s -> s.options().contains(option));
  }
}
