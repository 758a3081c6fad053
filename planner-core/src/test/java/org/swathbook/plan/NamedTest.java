package org.swathbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.catalog.IngredientId;
import org.swathbook.check.BrokenHouseRule;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.measure.Money;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.plan.draft.Delay;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Goal;
import org.swathbook.plan.draft.Stop;
import org.swathbook.plan.draft.Walked;
import org.swathbook.plan.draft.WalkedWith;

/** Each program that is shown is the best of all at what it is named after. */
class NamedTest {
  private static PlanGround ground;
  private static List<Walked> walked;

  @BeforeAll
  static void walk() {
    ground = new PlanGround(DemoCopy.inMemory(), "ND-4");
    List<Walked> all = new ArrayList<>();
    for (Draft d : ground.starts.all().stream().limit(60).toList()) {
      all.add(WalkedWith.broken(ground.evaluator.full(d), List.of()));
    }
    walked = List.copyOf(all);
    assertThat(walked.stream().map(w -> w.draft().stops().size()).distinct().count())
        .isGreaterThan(1);
  }

  private static Delay delay() {
    return new Delay(ground.space, ground.evaluator);
  }

  private static Map<String, Walked> choose(List<Walked> of, double oneSiteGonePct) {
    return Named.choose(of, ground.space, oneSiteGonePct, delay());
  }

  private static Walked best(List<Walked> of) {
    return Objects.requireNonNull(choose(of, 101).get(Named.BEST));
  }

  private static Walked breaking(Walked w, String... rules) {
    List<BrokenHouseRule> broken = new ArrayList<>();
    for (String r : rules) {
      broken.add(new BrokenHouseRule(r, Optional.empty(), OptionalInt.of(0), 2, 1));
    }
    return WalkedWith.broken(w, broken);
  }

  private static Money net(Walked w) {
    return w.net();
  }

  private static int stops(Walked w) {
    return w.draft().stops().size();
  }

  @Test
  void theFirstNetsMostAndTheOthersAreBestAtWhatTheyAreNamedAfter() {
    Map<String, Walked> shown = choose(walked, 101);
    Walked first = shown.values().iterator().next();
    assertThat(shown.keySet()).startsWith(Named.BEST).doesNotContain(Named.ASIDE, Named.SECURE);
    assertThat(walked).allMatch(w -> net(w).compareTo(net(first)) <= 0);
    Walked cheapest = shown.getOrDefault(Named.CHEAPEST, first);
    assertThat(walked).allMatch(w -> w.cost().compareTo(cheapest.cost()) >= 0);
    int fewest = walked.stream().mapToInt(NamedTest::stops).min().orElseThrow();
    assertThat(shown.values()).anyMatch(w -> stops(w) == fewest);
    Delay delay = delay();
    Walked late = shown.getOrDefault(Named.LATE, first);
    assertThat(walked.stream().sorted(Goal.BEST).limit(30))
        .allMatch(w -> delay.net(w).compareTo(delay.net(late)) <= 0);
    assertThat(shown.values()).doesNotHaveDuplicates();
  }

  /** Beside the best of two passes that is also the cheapest of these. */
  @Test
  void oneOfFewerPassesAndOneThatMayBeLateAreShown() {
    Delay delay = delay();
    List<Walked> two = walked.stream().filter(w -> stops(w) == 2).toList();
    Walked first = best(two);
    Walked late =
        two.stream()
            .filter(w -> w.cost().compareTo(first.cost()) > 0)
            .filter(w -> delay.net(w).compareTo(delay.net(first)) > 0)
            .findFirst()
            .orElseThrow();
    assertThat(choose(List.of(first, late), 101)).containsEntry(Named.LATE, late);
    Integer[] dearest =
        ground.space.options().stream()
            .sorted(Comparator.comparing(DoseOption::cost).reversed())
            .map(DoseOption::index)
            .limit(4)
            .toArray(Integer[]::new);
    Walked dear = alone(0, dearest);
    assertThat(dear.cost()).isGreaterThan(first.cost());
    assertThat(choose(List.of(first, dear), 101)).containsEntry(Named.FEWEST, dear);
    assertThat(choose(List.of(first, breaking(dear, HouseRuleCheck.SEASON_CONTROL)), 101))
        .doesNotContainKey(Named.FEWEST);
  }

  @Test
  void theOrderInWhichTheyWereMetChangesNothing() {
    List<Walked> other = new ArrayList<>(walked);
    Collections.reverse(other);
    assertThat(choose(other, 101)).isEqualTo(choose(walked, 101));
    assertThat(choose(List.of(), 101)).isEmpty();
  }

  /** What nets most of all breaks a rule, and so stands aside. */
  @Test
  void theHouseRulesGoBeforeTheReturn() {
    Walked best = best(walked);
    List<Walked> all = new ArrayList<>(walked);
    all.remove(best);
    Walked second = best(all);
    assertThat(net(second)).isLessThan(net(best));
    all.add(breaking(best, HouseRuleCheck.SEASON_CONTROL));
    Map<String, Walked> shown = choose(all, 101);
    assertThat(shown).containsEntry(Named.BEST, second).containsEntry(Named.ASIDE, best);
    Walked cheapest = walked.stream().min(Comparator.comparing(Walked::cost)).orElseThrow();
    List<Walked> others = new ArrayList<>(walked);
    others.remove(cheapest);
    others.add(breaking(cheapest, HouseRuleCheck.SEASON_CONTROL));
    assertThat(choose(walked, 101)).containsEntry(Named.CHEAPEST, cheapest);
    assertThat(choose(others, 101)).doesNotContainEntry(Named.CHEAPEST, cheapest);
  }

  @Test
  void whereNoneMeetsTheHouseRulesNoNameSaysSo() {
    List<Walked> all =
        walked.stream().map(w -> breaking(w, HouseRuleCheck.SEASON_CONTROL)).toList();
    Map<String, Walked> shown = choose(all, 101);
    assertThat(shown.keySet())
        .startsWith("Fewest house rules broken, then highest net")
        .noneMatch(n -> n.contains("within the house rules"))
        .filteredOn(Named::isOfDelay)
        .allMatch(n -> n.endsWith("with as few rules broken"));
    assertThat(Named.isOfDelay(Named.LATE)).isTrue();
    assertThat(Named.isOfDelay(Named.BEST)).isFalse();
  }

  /** The best whose weakest figure is not below the house's. */
  @Test
  void theOneThatHoldsWithASiteGoneIsTheBestOfThose() {
    double most = walked.stream().mapToDouble(NamedTest::weakest).max().orElseThrow();
    Walked first = best(walked);
    assertThat(weakest(first)).isLessThan(most);
    Walked cheapest = walked.stream().min(Comparator.comparing(Walked::cost)).orElseThrow();
    assertThat(weakest(cheapest)).isLessThan(weakest(first));
    for (double pct : new double[] {most, (most + weakest(first)) / 2}) {
      Walked best =
          walked.stream().filter(w -> weakest(w) >= pct - 1e-9).min(Goal.BEST).orElseThrow();
      assertThat(choose(walked, pct).values()).contains(best);
      assertThat(cheapest.cost()).as("no other name takes it").isLessThan(best.cost());
      assertThat(choose(List.of(first, best, cheapest), pct)).containsEntry(Named.SECURE, best);
    }
    assertThat(choose(walked, weakest(first))).doesNotContainKey(Named.SECURE);
  }

  private static double weakest(Walked w) {
    return w.outcome().weeds().stream()
        .filter(x -> x.pressure().driver().isDriver())
        .mapToDouble(x -> x.controlPctWithoutWeakest())
        .min()
        .orElse(100);
  }

  private static Walked alone(int date, Integer... options) {
    Draft draft = new Draft(List.of(new Stop(date, List.of(options))));
    return WalkedWith.broken(ground.evaluator.full(draft), List.of());
  }

  /**
   * One with no active in common goes beside the first even where it is better at nothing; after
   * emergence is later than three days after planting (ours).
   */
  @ParameterizedTest
  @CsvSource({
    "3, Other actives in the soil at planting",
    "4, Other actives after emergence",
    "20, Other actives after emergence"
  })
  void otherActivesAreShownWhereLittleElseIs(int daysFromPlanting, String name) {
    int date = ground.space.grid().placeOf(daysFromPlanting);
    List<Walked> all = new ArrayList<>();
    for (int o = 0; o < ground.space.options().size(); o++) {
      all.add(alone(date, o));
    }
    Walked first = all.stream().max(Comparator.comparing(Walked::net)).orElseThrow();
    int active = option(first);
    Delay delay = delay();
    Walked other =
        all.stream()
            .filter(w -> !ingredient(w).equals(ingredient(first)))
            .filter(w -> w.cost().compareTo(first.cost()) > 0)
            .filter(w -> w.net().compareTo(first.net()) < 0)
            .filter(w -> delay.net(w).compareTo(delay.net(first)) < 0)
            .findFirst()
            .orElseThrow();
    Walked both = alone(date, active, option(other));
    assertThat(choose(List.of(first, other), 101))
        .isEqualTo(Map.of(Named.BEST, first, name, other));
    Map<String, Walked> shared = choose(List.of(first, both), 101);
    assertThat(shared.keySet()).noneMatch(n -> n.startsWith("Other actives"));
    Walked worse = breaking(other, HouseRuleCheck.SEASON_CONTROL);
    assertThat(choose(List.of(first, worse), 101)).as("one rule broken").containsKey(name);
    Walked bad = breaking(other, HouseRuleCheck.SEASON_CONTROL, HouseRuleCheck.MIN_SOIL_SITES);
    assertThat(choose(List.of(first, bad), 101)).as("two rules").doesNotContainKey(name);
  }

  private static int option(Walked w) {
    return w.draft().stops().get(0).options().get(0);
  }

  private static IngredientId ingredient(Walked w) {
    return ground.space.option(option(w)).ingredient();
  }
}
