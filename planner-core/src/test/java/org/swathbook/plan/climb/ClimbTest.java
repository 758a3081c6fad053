package org.swathbook.plan.climb;

import static org.assertj.core.api.Assertions.assertThat;
import static org.swathbook.plan.climb.Invented.ACETOCHLOR;
import static org.swathbook.plan.climb.Invented.CHOLINE;
import static org.swathbook.plan.climb.Invented.CLETHODIM;
import static org.swathbook.plan.climb.Invented.GLUFOSINATE;
import static org.swathbook.plan.climb.Invented.METRIBUZIN;
import static org.swathbook.plan.climb.Invented.PLANTING;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Stop;
import org.swathbook.plan.draft.Walked;

/** Hills whose shape a test lays out, and where climbs on them end. */
class ClimbTest {
  private static final Steps STEPS = new Steps(2, 1, true);

  private static Draft draft(Stop... stops) {
    return new Draft(List.of(stops));
  }

  private static Draft one(int date, Integer... options) {
    return draft(new Stop(date, List.of(options)));
  }

  private static Draft choline(int date) {
    return one(date, CHOLINE);
  }

  @Test
  void aClimbEndsWhereNoStepGoesHigher() {
    Invented hill = Invented.ofSix().worth(d -> -Math.abs(10 * date(d) - 555));
    Search search = hill.search(STEPS);
    assertThat(search.climb(choline(PLANTING), 1).map(Walked::draft).map(ClimbTest::date))
        .as("5 dollars from the top on either side: the earlier key")
        .contains(55.0);
    assertThat(hill.asked).doesNotHaveDuplicates().startsWith(choline(PLANTING));
    List<Draft> before = List.copyOf(hill.asked);
    assertThat(search.climb(choline(PLANTING), 1)).isPresent();
    assertThat(hill.asked).as("all known").isEqualTo(before);
    assertThat(search.walked()).extracting(Walked::draft).isEqualTo(before);
  }

  /** Of the only pass; nothing sprayed stands in the valley. */
  private static double date(Draft d) {
    return d.stops().isEmpty() ? -1_000 : d.stops().get(0).date();
  }

  @Test
  void whatMayNotBeIsNoStart() {
    Invented hill = Invented.ofSix().legal(d -> !d.equals(choline(PLANTING)));
    Search search = hill.search(STEPS);
    assertThat(search.climb(choline(PLANTING), 4)).isEmpty();
    assertThat(search.walk(choline(PLANTING))).isEmpty();
    assertThat(hill.asked).isEmpty();
    assertThat(search.best()).isEmpty();
  }

  /** Forty-five programs, each one step from the next and no nearer to another. */
  @Test
  void noClimbGoesMoreThanFortySteps() {
    List<Draft> path = new ArrayList<>();
    leg(path, GLUFOSINATE, 0, 96);
    leg(path, CHOLINE, 96, 90, 6);
    leg(path, ACETOCHLOR, 6, 5, 89);
    leg(path, METRIBUZIN, 89, 91, 7);
    leg(path, CLETHODIM, 7, 8, 92);
    assertThat(path).hasSizeGreaterThan(42);
    Search search = Invented.ofSix().onlyAlong(path).search(STEPS);
    assertThat(search.climb(path.get(0), 1).map(Walked::draft)).contains(path.get(40));
    assertThat(search.climb(path.get(2), 1).map(Walked::draft)).contains(path.get(42));
  }

  /** From one place to a next, and on by twelve days to the last. */
  private static void leg(List<Draft> path, int option, int... places) {
    for (int i = 0; i < places.length - 1; i++) {
      path.add(one(places[i], option));
    }
    int from = places[places.length - 2];
    int last = places[places.length - 1];
    for (int at = from; at != last; ) {
      at += last > from ? 12 : -12;
      path.add(one(at, option));
    }
  }

  /**
   * The third step gains half a dollar where a dollar is worth one; it is taken and is the last.
   */
  @Test
  void aStepThatGainsLittleIsTheLast() {
    List<Draft> path =
        List.of(choline(6), choline(18), choline(30), choline(42), choline(54), choline(66));
    double[] dollars = {0, 1, 2, 2.5, 10, 20};
    Invented hill = Invented.ofSix().onlyAlong(path);
    hill.worth(d -> path.contains(d) ? dollars[path.indexOf(d)] : -1_000);
    assertThat(hill.search(STEPS).climb(path.get(0), 1).map(Walked::draft)).contains(path.get(3));
    assertThat(hill.search(new Steps(2, 0.5, true)).climb(path.get(0), 1).map(Walked::draft))
        .contains(path.get(5));
  }

  private static final Draft START = choline(60);
  private static final Draft MOVED = choline(63);

  /** Choline alone may stand where the others may not, so the pass more is one of it. */
  private static final Draft ONE_MORE = draft(new Stop(45, List.of(CHOLINE)), START.stops().get(0));

  private static Invented onePassMore(double moved, double more) {
    Map<Draft, Double> worth = Map.of(START, 0.0, MOVED, moved, ONE_MORE, more);
    return Invented.ofSix()
        .allowing((o, date) -> o.index() == CHOLINE)
        .worth(d -> worth.getOrDefault(d, -1_000.0))
        .legal(d -> worth.containsKey(d) || d.equals(choline(45)));
  }

  private static Draft top(Invented hill, boolean atOnce, int mostPasses) {
    return hill.search(new Steps(2, 1, atOnce))
        .climb(START, mostPasses)
        .map(Walked::draft)
        .orElseThrow();
  }

  /** A move gains 5 dollars, a pass on day 15 a hundred. */
  @Test
  void onePassMoreIsTriedAtEachStepOrWhereNoOtherIsWorthIt() {
    assertThat(top(onePassMore(5, 100), true, 2)).isEqualTo(ONE_MORE);
    assertThat(top(onePassMore(5, 100), false, 2)).isEqualTo(MOVED);
    assertThat(top(onePassMore(0.5, 100), false, 2)).isEqualTo(ONE_MORE);
    assertThat(top(onePassMore(-5, 100), false, 2)).isEqualTo(ONE_MORE);
    assertThat(top(onePassMore(0.5, 0.25), false, 2)).isEqualTo(MOVED);
    assertThat(top(onePassMore(-5, -5), false, 2)).isEqualTo(START);
    assertThat(top(onePassMore(-5, 100), true, 1)).as("one pass at most").isEqualTo(START);
  }

  /** A post on day 9 is none of the usual ones, which begin on day 15. */
  @Test
  void earlyPostsAreAddedWhereTheyAreAskedFor() {
    Draft early = draft(new Stop(39, List.of(CHOLINE)), START.stops().get(0));
    Invented hill =
        Invented.ofSix()
            .allowing((o, date) -> o.index() == CHOLINE)
            .worth(d -> d.equals(early) ? 10 : 0)
            .legal(d -> d.equals(START) || d.equals(early));
    assertThat(hill.search(STEPS).climb(START, 2).map(Walked::draft)).contains(START);
    assertThat(hill.search(STEPS).climbWithEarlyPosts(START, 2).map(Walked::draft)).contains(early);
    assertThat(hill.search(STEPS).climbWithEarlyPosts(START, 1).map(Walked::draft)).contains(START);

    Search fromMisses = hill.search(STEPS);
    fromMisses.keep(hill.walked(START, List.of(Invented.missed(HouseRuleCheck.SEASON_CONTROL, 1))));
    fromMisses.fromNearMisses(2);
    assertThat(fromMisses.walked()).extracting(Walked::draft).contains(early);
  }

  /** Nothing sprayed nets most here, and is no program to recommend. */
  @Test
  void theBestHasAPass() {
    Invented hill = Invented.ofSix().worth(d -> d.stops().isEmpty() ? 100 : date(d));
    Search search = hill.search(STEPS);
    search.walk(Draft.EMPTY);
    assertThat(search.best()).isEmpty();
    search.walk(choline(20));
    search.walk(choline(40));
    search.walk(choline(30));
    assertThat(search.best().map(Walked::draft)).contains(choline(40));
  }

  @Test
  void whatWasWalkedElsewhereIsKeptOnce() {
    Invented hill = Invented.ofSix();
    Search search = hill.search(STEPS);
    Walked first = hill.walked(START, List.of());
    Walked again = hill.walked(START, List.of());
    search.keep(first);
    search.keep(again);
    assertThat(search.walk(START)).containsSame(first);
    assertThat(hill.asked).isEmpty();
  }

  /** For each rule that a program breaks alone the nearest, and of those as near the best. */
  @Test
  void ofEachHouseRuleTheNearestMissIsNamed() {
    String control = HouseRuleCheck.SEASON_CONTROL;
    String sites = HouseRuleCheck.MIN_FOLIAR_SITES;
    Invented hill = Invented.ofSix().worth(ClimbTest::date);
    Search search = hill.search(STEPS);
    keep(search, hill, Draft.EMPTY, Map.of(control, 1.0));
    keep(search, hill, choline(10), Map.of(control, 30.0));
    keep(search, hill, choline(11), Map.of(control, 20.0));
    keep(search, hill, choline(12), Map.of(control, 20.0));
    keep(search, hill, choline(13), Map.of(control, 25.0));
    keep(search, hill, choline(20), Map.of(sites, 2.0));
    keep(search, hill, choline(21), Map.of(sites, 1.0));
    keep(search, hill, choline(30), Map.of(sites, 0.1, control, 0.1));
    keep(search, hill, choline(31), Map.of());
    assertThat(search.nearMisses())
        .extracting(Walked::draft)
        .containsExactlyInAnyOrder(choline(12), choline(21));
  }

  private static void keep(Search search, Invented hill, Draft draft, Map<String, Double> misses) {
    search.keep(
        hill.walked(
            draft,
            misses.entrySet().stream()
                .map(e -> Invented.missed(e.getKey(), e.getValue()))
                .toList()));
  }

  private static final Draft BOTH = one(60, GLUFOSINATE, CHOLINE);

  /** What is climbed to once 2,4-D or glufosinate is gone: those without them, metribuzin added. */
  private static final Draft WITHOUT_CHOLINE = one(60, GLUFOSINATE, METRIBUZIN);

  private static final Draft WITHOUT_GLUFOSINATE = one(60, CHOLINE, METRIBUZIN);

  private static Search left(List<Draft> breaking) {
    Invented hill =
        Invented.ofSix()
            .worth(d -> d.equals(BOTH) ? 50 : holdsMetribuzin(d) ? 20 : 0)
            .legal(
                d ->
                    List.of(BOTH, WITHOUT_CHOLINE, WITHOUT_GLUFOSINATE).contains(d)
                        || d.equals(one(60, GLUFOSINATE))
                        || d.equals(choline(60)))
            .breaking(
                d -> breaking.contains(d) ? List.of(HouseRuleCheck.SEASON_CONTROL) : List.of());
    Search search = hill.search(STEPS);
    search.withoutEachActiveOf(search.walk(BOTH).orElseThrow(), hill.space());
    return search;
  }

  private static boolean holdsMetribuzin(Draft d) {
    return d.stops().stream().anyMatch(s -> s.options().contains(METRIBUZIN));
  }

  /** In the order of their names: 2,4-D first. */
  @Test
  void theBestIsLeftByOneActiveAfterTheOther() {
    assertThat(left(List.of(BOTH)).walked())
        .extracting(Walked::draft)
        .as("the first that meets the house rules is enough")
        .containsExactly(BOTH, one(60, GLUFOSINATE), WITHOUT_CHOLINE);
    assertThat(left(List.of(BOTH, one(60, GLUFOSINATE), WITHOUT_CHOLINE)).walked())
        .extracting(Walked::draft)
        .containsExactly(
            BOTH, one(60, GLUFOSINATE), WITHOUT_CHOLINE, choline(60), WITHOUT_GLUFOSINATE);
  }

  @Test
  void aWayOutHasNoMorePassesThanTheField() {
    Draft more = draft(new Stop(39, List.of(METRIBUZIN)), new Stop(60, List.of(GLUFOSINATE)));
    for (int most : new int[] {1, 2}) {
      Invented hill =
          Invented.ofSix()
              .passes(most)
              .allowing((o, date) -> o.index() != CHOLINE || date == 60)
              .worth(d -> d.equals(more) ? 20 : 0)
              .legal(
                  d ->
                      List.of(BOTH, more, one(60, GLUFOSINATE)).contains(d)
                          || d.stops().size() == 2 && d.stops().get(0).date() == 39)
              .breaking(d -> List.of(HouseRuleCheck.SEASON_CONTROL));
      Search search = hill.search(new Steps(50, 1, true));
      search.withoutEachActiveOf(search.walk(BOTH).orElseThrow(), hill.space());
      assertThat(search.walked().stream().anyMatch(w -> w.draft().stops().size() == 2))
          .as("%s passes at most", most)
          .isEqualTo(most == 2);
    }
  }

  /** Those that may not be take no place among the first. */
  @Test
  void theFirstByAScoreAreThoseThatMayBe() {
    Invented hill = Invented.ofSix().worth(ClimbTest::date).legal(d -> date(d) != 30);
    Search search = hill.search(STEPS);
    List<Draft> drafts =
        List.of(choline(10), choline(40), choline(30), one(20, CLETHODIM), choline(20));
    assertThat(search.top(drafts, 2, hill::quick)).containsExactly(choline(40), choline(20));
    assertThat(search.top(drafts, 9, hill::quick))
        .as("equal ones by their keys")
        .containsExactly(choline(40), choline(20), one(20, CLETHODIM), choline(10));
    assertThat(search.topByGoal(drafts, 2)).containsExactly(choline(40), choline(20));
    assertThat(search.topByGoal(drafts, 9))
        .containsExactly(choline(40), choline(20), one(20, CLETHODIM), choline(10));
    assertThat(search.topByGoal(drafts, 0)).isEmpty();
  }

  /** What was walked may be, and is not judged again. */
  @Test
  void whatIsKnownIsNotAskedWhetherItMayBe() {
    Invented hill = Invented.ofSix().legal(d -> false);
    Search search = hill.search(STEPS);
    search.keep(hill.walked(START, List.of()));
    assertThat(search.top(List.of(START, MOVED), 2, hill::quick)).containsExactly(START);
    assertThat(search.topByGoal(List.of(START, MOVED), 2)).containsExactly(START);
  }

  @Test
  void ofEqualProgramsTheOneOfTheLowerKeyIsBetter() {
    Invented hill = Invented.ofSix().worth(d -> d.equals(choline(30)) ? 1 : 0);
    Walked low = hill.walked(choline(10), List.of());
    Walked high = hill.walked(choline(20), List.of());
    Walked worthMore = hill.walked(choline(30), List.of());
    assertThat(Search.isBetter(low, high)).isTrue();
    assertThat(Search.isBetter(high, low)).isFalse();
    assertThat(Search.isBetter(low, low)).isFalse();
    assertThat(Search.isBetter(worthMore, low)).isTrue();
    assertThat(Search.isBetter(low, worthMore)).isFalse();
  }
}
