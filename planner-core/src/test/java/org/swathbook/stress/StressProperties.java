package org.swathbook.stress;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.swathbook.catalog.WeedId;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.StandingSize;
import org.swathbook.plan.Drawn;
import org.swathbook.program.Anchor;
import org.swathbook.program.Pass;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.YearOutcome;
import org.swathbook.testing.Fixtures;

/**
 * Laws of the cases on random programs without listed interactions. Years are compared in which the
 * same passes are made: a partner may close a window.
 */
class StressProperties {
  private static final double ROUNDING = 1e-9;
  private static final String[] FIELDS = {"ND-1", "QH-1"};
  private static final Object[][] ACTIVES = {
    {"S-metolachlor", 1.4},
    {"pyroxasulfone", 0.11},
    {"flumioxazin", 0.08},
    {"metribuzin", 0.4},
    {"atrazine", 1.0},
    {"mesotrione", 0.1},
    {"glyphosate", 1.0},
    {"glufosinate-ammonium", 0.6},
    {"2,4-D choline", 0.9}
  };

  private static Situation situation(Random random) {
    List<Pass> passes = new ArrayList<>();
    int day = -10 + random.nextInt(12);
    int n = 1 + random.nextInt(3);
    for (int p = 0; p < n; p++) {
      List<Object> mix = new ArrayList<>();
      List<Object[]> left = new ArrayList<>(List.of(ACTIVES));
      for (int a = 0; a <= random.nextInt(3); a++) {
        Object[] active = left.remove(random.nextInt(left.size()));
        mix.add(active[0]);
        mix.add(((Double) active[1]) * (0.5 + random.nextDouble()));
      }
      passes.add(SmallSeason.pass(new Anchor.FromPlanting(day), mix.toArray()));
      day += 10 + random.nextInt(20);
    }
    String field = FIELDS[random.nextInt(FIELDS.length)];
    return SmallSeason.situation(
        Fixtures.book(),
        field,
        new org.swathbook.program.Program("random", Fixtures.field(field).id(), passes),
        SmallSeason.TODAY);
  }

  /** Returns how many years could be compared. */
  private static int assertNoYearIsBetter(Situation plain, Stressed stressed) {
    SeasonOutcome o = SmallSeason.walk(stressed);
    int compared = 0;
    for (int y = 0; y < o.years().size(); y++) {
      YearOutcome before = plain.outcome().years().get(y);
      YearOutcome after = o.years().get(y);
      if (madeAlike(plain, stressed, before, after)) {
        compared++;
        for (WeedId weed : before.controlPct().keySet()) {
          assertThat(after.controlPct().get(weed))
              .as("%s, %s in %s", stressed.of(), weed, before.year())
              .isLessThanOrEqualTo(before.controlPct().get(weed) + ROUNDING);
        }
        assertThat(after.lossShare()).isGreaterThanOrEqualTo(before.lossShare() - ROUNDING);
      }
    }
    return compared;
  }

  /** Whether the passes that both programs have are made in both, or in neither. */
  private static boolean madeAlike(
      Situation plain, Stressed stressed, YearOutcome before, YearOutcome after) {
    List<Integer> origins = stressed.origins();
    for (int p = 0; p < origins.size(); p++) {
      if (!before.passDays().get(origins.get(p)).equals(after.passDays().get(p))) {
        return false;
      }
    }
    return plain.places().equals(Stressed.all(plain.program()));
  }

  @Property(tries = 60)
  void aMissingProductNeverImprovesControl(@ForAll long seed) {
    Situation plain = situation(new Random(seed));
    new MissingProduct().pose(plain).variants().forEach(v -> assertNoYearIsBetter(plain, v));
  }

  @Property(tries = 60)
  void oneMoreResistanceNeverImprovesControlAndHalfIsNoWorse(@ForAll long seed) {
    Situation plain = situation(new Random(seed));
    for (Stressed all : new MoreResistance().pose(plain).variants()) {
      Stressed half = all.milder().orElseThrow();
      // No window depends on what a weed resists.
      assertThat(assertNoYearIsBetter(plain, all)).isEqualTo(plain.outcome().years().size());
      assertNoYearIsBetter(plain, half);
      SeasonOutcome atAll = SmallSeason.walk(all);
      SeasonOutcome atHalf = SmallSeason.walk(half);
      for (int w = 0; w < atAll.weeds().size(); w++) {
        assertThat(atAll.weeds().get(w).controlPct())
            .isLessThanOrEqualTo(atHalf.weeds().get(w).controlPct() + ROUNDING);
      }
    }
  }

  /**
   * By the tallest plant, as nothing but weather left it: by share of the number, seedlings that
   * come up meanwhile may make the weeds look smaller.
   */
  @Property(tries = 60)
  void aLongerHoldNeverLowersTheSizeAtThatPass(@ForAll long seed) {
    Random random = new Random(seed);
    Situation plain = situation(random);
    Drawn.something(plain.firstPost().isPresent());
    if (plain.firstPost().isEmpty()) {
      return;
    }
    int shorter = random.nextInt(10);
    int longer = shorter + random.nextInt(10);
    Stressed early = new LateSprayer(shorter).pose(plain).variants().get(0);
    Stressed late = new LateSprayer(longer).pose(plain).variants().get(0);
    int place = plain.places().get(plain.firstPost().orElseThrow().index());
    PassOutcome a = passOf(early, place);
    PassOutcome b = passOf(late, place);
    for (int y = 0; y < plain.traces().years().size(); y++) {
      SeasonTrace trace = plain.traces().years().get(y);
      int from = a.timing().years().get(y).day();
      int to = b.timing().years().get(y).day();
      assertThat(to).isGreaterThanOrEqualTo(from);
      for (int w = 0; w < trace.weedCount() && to < trace.days(); w++) {
        double small = StandingSize.percentileCm(trace, w, from, 1).orElse(0);
        assertThat(StandingSize.percentileCm(trace, w, to, 1).orElse(0))
            .isGreaterThanOrEqualTo(small);
      }
    }
  }

  private static PassOutcome passOf(Stressed s, int place) {
    List<Integer> places = PassPlaces.inOrder(s.book(), s.traces(), s.program());
    return SmallSeason.walk(s).passes().get(places.indexOf(place));
  }

  @Property(tries = 40)
  void aDrySpellNeverStartsALayerSooner(@ForAll long seed) {
    Situation plain = situation(new Random(seed));
    for (Stressed dry : new NoRainAfterLayer(14).pose(plain).variants()) {
      int pass = plain.firstLayer().orElseThrow().index();
      SeasonOutcome o = SmallSeason.walk(dry);
      for (int y = 0; y < o.years().size(); y++) {
        YearOutcome before = plain.outcome().years().get(y);
        YearOutcome after = o.years().get(y);
        assertThat(after.passDays().get(pass)).isEqualTo(before.passDays().get(pass));
        for (var l : after.layers()) {
          before.layers().stream()
              .filter(k -> k.pass() == pass && l.pass() == pass && k.weed().equals(l.weed()))
              .forEach(k -> assertThat(l.fromDay()).isGreaterThanOrEqualTo(k.fromDay()));
        }
      }
    }
  }
}
