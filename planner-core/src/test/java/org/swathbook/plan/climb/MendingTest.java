package org.swathbook.plan.climb;

import static org.assertj.core.api.Assertions.assertThat;
import static org.swathbook.plan.climb.Invented.ACETOCHLOR;
import static org.swathbook.plan.climb.Invented.CHOLINE;
import static org.swathbook.plan.climb.Invented.CLETHODIM;
import static org.swathbook.plan.climb.Invented.GLUFOSINATE;
import static org.swathbook.plan.climb.Invented.METRIBUZIN;
import static org.swathbook.plan.climb.Invented.MORE_GLUFOSINATE;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Site;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Stop;
import org.swathbook.season.outcome.LayerSpan;
import org.swathbook.season.outcome.SiteControl;
import org.swathbook.season.outcome.WalkedPasses;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.season.outcome.WeedOutcome.LayerOverlap;

/**
 * What is tried in a pass that lacks something against Palmer amaranth. The house asks for 95 % of
 * control, 90 % with a site gone, 5 % exposed at most, two sites through leaves where it stands,
 * and two in the soil of a first layer.
 */
class MendingTest {
  private static final Stop PASS = new Stop(45, List.of(CLETHODIM));
  private static final Set<Integer> LEAVES =
      Set.of(GLUFOSINATE, MORE_GLUFOSINATE, CHOLINE, METRIBUZIN);
  private static final Set<Integer> SOIL = Set.of(ACETOCHLOR, METRIBUZIN);
  private static final Set<Integer> BOTH =
      Set.of(GLUFOSINATE, MORE_GLUFOSINATE, CHOLINE, ACETOCHLOR, METRIBUZIN);

  private static WeedOutcome fine() {
    return Invented.palmer(95, 90, 5, List.of());
  }

  private static SiteControl site(int number, boolean effective) {
    return new SiteControl(
        Site.of(number), Invented.SIX.get(0).ingredient(), effective ? 90 : 60, false, effective);
  }

  /** Doses that are put into the only pass where the program breaks some house rule. */
  private static Set<Integer> tried(Invented field) {
    Draft draft = Draft.EMPTY.with(PASS);
    Set<Integer> out = new TreeSet<>();
    field
        .mending()
        .of(field.walked(draft, List.of(Invented.missed(HouseRuleCheck.SEASON_CONTROL, 1))))
        .forEach(d -> out.addAll(d.stops().get(0).options()));
    out.remove(CLETHODIM);
    return out;
  }

  @Test
  void aProgramWithinTheHouseRulesNeedsNothing() {
    Invented field = Invented.ofSix().comingTo(Invented.palmer(50, 50, 50, List.of()));
    assertThat(field.mending().of(field.walked(Draft.EMPTY.with(PASS), List.of()))).isEmpty();
  }

  /** At each limit nothing is tried: the rule that is broken is another weed's. */
  @Test
  void eachShortcomingIsMendedByWhatMendsIt() {
    assertThat(tried(Invented.ofSix().comingTo(fine()))).isEmpty();
    assertThat(tried(Invented.ofSix().comingTo(Invented.palmer(94.9, 90, 5, List.of()))))
        .as("control")
        .isEqualTo(BOTH);
    assertThat(tried(Invented.ofSix().comingTo(Invented.palmer(95, 89.9, 5, List.of()))))
        .as("with a site gone")
        .isEqualTo(BOTH);
    assertThat(tried(Invented.ofSix().comingTo(Invented.palmer(95, 90, 5.1, List.of()))))
        .as("exposed")
        .isEqualTo(SOIL);
    LayerOverlap hole = new LayerOverlap(0, 1, -3, 1, 0, 40);
    assertThat(tried(Invented.ofSix().comingTo(Invented.palmer(95, 90, 5, List.of(hole)))))
        .as("a hole between layers")
        .isEqualTo(SOIL);
  }

  private static Invented standing(SiteControl... leaves) {
    return Invented.ofSix()
        .comingTo(fine())
        .meeting(s -> Invented.palmerAt(true, List.of(leaves), List.of()));
  }

  /** Two effective ones are asked for; what the pass has is not tried again, what half works is. */
  @Test
  void aPassOverStandingPlantsThatLacksASiteIsTriedWithIt() {
    assertThat(tried(standing())).isEqualTo(LEAVES);
    assertThat(tried(standing(site(10, true)))).isEqualTo(Set.of(CHOLINE, METRIBUZIN));
    assertThat(tried(standing(site(10, false)))).isEqualTo(LEAVES);
    assertThat(tried(standing(site(10, true), site(4, true)))).isEmpty();
  }

  private static Invented layer(SiteControl... soil) {
    LayerSpan span =
        new LayerSpan(0, Invented.PALMER, List.of(Invented.SIX.get(0).ingredient()), 200, 240);
    return Invented.ofSix()
        .comingTo(fine())
        .layers(d -> List.of(new WalkedPasses.Year(List.of(195), List.of(span))))
        .meeting(s -> Invented.palmerAt(false, List.of(), List.of(soil)));
  }

  @Test
  void aLayerThatLacksASiteIsTriedWithIt() {
    assertThat(tried(layer(site(15, true)))).isEqualTo(Set.of(METRIBUZIN));
    assertThat(tried(layer(site(15, false)))).isEqualTo(SOIL);
    assertThat(tried(layer(site(15, true), site(5, true)))).isEmpty();
    assertThat(tried(layer(site(15, true), site(14, true)))).as("two are enough").isEmpty();
  }

  /** Of two passes only the one that lacks something changes. */
  @Test
  void onlyThePassThatLacksItChanges() {
    Stop early = new Stop(20, List.of(CLETHODIM));
    Draft two = new Draft(List.of(early, PASS));
    Invented field =
        Invented.ofSix()
            .comingTo(fine())
            .meeting(s -> Invented.palmerAt(s.equals(PASS), List.of(), List.of()));
    List<Draft> mended =
        new ArrayList<>(
            field
                .mending()
                .of(
                    field.walked(
                        two, List.of(Invented.missed(HouseRuleCheck.MIN_FOLIAR_SITES, 2)))));
    assertThat(mended)
        .isNotEmpty()
        .allMatch(d -> d.stops().get(0).equals(early) && d.stops().get(1).date() == PASS.date());
  }

  /** A pass that is made is past mending, and the one after it is the first of the draft. */
  @Test
  void whatIsMadeStays() {
    Invented field =
        Invented.ofSix()
            .comingTo(fine())
            .made(new Stop(20, List.of(CLETHODIM)))
            .meeting(s -> Invented.palmerAt(true, List.of(), List.of()));
    assertThat(tried(field)).isEqualTo(LEAVES);
  }
}
