package org.swathbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Site;
import org.swathbook.control.FoliarTable;
import org.swathbook.control.HeightClasses;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.season.RandomPrograms.Line;
import org.swathbook.season.RandomPrograms.Plan;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.testing.Fixtures;

/** Laws that hold for any program, sensible or not, on any fixture field. */
class KernelProperties {
  private static final double ROUNDING = 1e-9;

  @Property(tries = 200)
  void numbersStayInTheirBounds(@ForAll long seed) {
    Random random = new Random(seed);
    Kernel kernel = Kernels.of(RandomPrograms.field(random));
    Score s = RandomPrograms.score(kernel, RandomPrograms.plans(random, 4));
    Score untreated = kernel.score(List.of());
    for (int y = 0; y < s.years(); y++) {
      assertThat(s.lossShare(y)).isBetween(0.0, untreated.lossShare(y) + ROUNDING);
      for (int w = 0; w < kernel.traces().weeds().size(); w++) {
        assertThat(s.controlPct(w, y)).isBetween(-ROUNDING, 100.0);
        assertThat(s.allSurvivorsPerM2(w, y))
            .isBetween(s.survivorsPerM2(w, y), kernel.cell(y, w).totalEmergence + ROUNDING);
        assertThat(s.exposedShare(w, y)).isBetween(0.0, 1.0);
        assertThat(s.exposedToNothing(w, y)).isBetween(0.0, s.exposedShare(w, y) + ROUNDING);
      }
    }
  }

  @Property(tries = 200)
  void onePassMoreNeverControlsLess(@ForAll long seed) {
    Random random = new Random(seed);
    Kernel kernel = Kernels.of(RandomPrograms.field(random));
    List<Plan> fewer = RandomPrograms.plans(random, 3);
    List<Plan> more = new ArrayList<>(fewer);
    more.add(RandomPrograms.plan(random));
    more.sort((a, b) -> Integer.compare(a.day(), b.day()));
    assertNoWorse(kernel, RandomPrograms.score(kernel, more), RandomPrograms.score(kernel, fewer));
  }

  @Property(tries = 200)
  void moreOfAnActiveNeverControlsLess(@ForAll long seed) {
    Random random = new Random(seed);
    Kernel kernel = Kernels.of(RandomPrograms.field(random));
    List<Plan> low = new ArrayList<>(RandomPrograms.plans(random, 3));
    low.add(RandomPrograms.plan(random));
    low.sort((a, b) -> Integer.compare(a.day(), b.day()));
    int p = random.nextInt(low.size());
    List<Line> lines = new ArrayList<>(low.get(p).lines());
    int l = random.nextInt(lines.size());
    lines.set(l, new Line(lines.get(l).active(), lines.get(l).lb() * (1 + random.nextDouble())));
    List<Plan> high = new ArrayList<>(low);
    high.set(p, new Plan(low.get(p).day(), lines));
    // A rate above the label's over the crop closes days that the lower one leaves open.
    Assume.that(
        RandomPrograms.prepare(kernel, high)
            .get(p)
            .missedYears()
            .equals(RandomPrograms.prepare(kernel, low).get(p).missedYears()));
    assertNoWorse(kernel, RandomPrograms.score(kernel, high), RandomPrograms.score(kernel, low));
  }

  @Property(tries = 200)
  void aSiteThatDoesNothingNeverHelps(@ForAll long seed) {
    Random random = new Random(seed);
    Kernel kernel = Kernels.of(RandomPrograms.field(random));
    List<PreparedPass> passes = RandomPrograms.prepare(kernel, RandomPrograms.plans(random, 4));
    Score all = kernel.score(passes);
    for (Site s : WeedOutcomes.sitesOf(passes)) {
      assertNoWorse(kernel, all, kernel.score(passes, s));
    }
  }

  @Property(tries = 2000)
  @Tag("slow")
  void dosesPassesAndSitesOften(@ForAll long seed) {
    onePassMoreNeverControlsLess(seed);
    tallerPlantsAreNeverControlledBetter(seed);
    moreOfAnActiveNeverControlsLess(seed);
  }

  static void assertNoWorse(Kernel kernel, Score better, Score worse) {
    for (int y = 0; y < better.years(); y++) {
      assertThat(better.lossShare(y)).isLessThanOrEqualTo(worse.lossShare(y) + ROUNDING);
      for (int w = 0; w < kernel.traces().weeds().size(); w++) {
        assertThat(better.controlPct(w, y))
            .isGreaterThanOrEqualTo(worse.controlPct(w, y) - ROUNDING);
        assertThat(better.allSurvivorsPerM2(w, y))
            .isLessThanOrEqualTo(worse.allSurvivorsPerM2(w, y) + ROUNDING);
        assertThat(better.exposedShare(w, y))
            .isLessThanOrEqualTo(worse.exposedShare(w, y) + ROUNDING);
      }
    }
  }

  @Property(tries = 100)
  void theOrderOfProductsInATankChangesNoBit(@ForAll long seed) {
    Random random = new Random(seed);
    Kernel kernel = Kernels.of(RandomPrograms.field(random));
    List<Plan> plans = RandomPrograms.plans(random, 3);
    List<Plan> shuffled = new ArrayList<>();
    for (Plan p : plans) {
      List<Line> lines = new ArrayList<>(p.lines());
      Collections.shuffle(lines, random);
      shuffled.add(new Plan(p.day(), lines));
    }
    assertSameBits(RandomPrograms.score(kernel, shuffled), RandomPrograms.score(kernel, plans));
  }

  @Property(tries = 20)
  void whatIsKeptFromEarlierCallsChangesNoBit(@ForAll long seed) {
    Random random = new Random(seed);
    Kernel used = Kernels.of("ND-1");
    List<Plan> plans = RandomPrograms.plans(random, 3);
    Kernel fresh =
        Kernel.of(Fixtures.book(), TraceBuilder.build(Fixtures.book(), Fixtures.field("ND-1")));
    assertSameBits(RandomPrograms.score(fresh, plans), RandomPrograms.score(used, plans));
  }

  static void assertSameBits(Score a, Score b) {
    assertThat(a.loss).isEqualTo(b.loss);
    assertThat(a.controlPct).isDeepEqualTo(b.controlPct);
    assertThat(a.exposed).isDeepEqualTo(b.exposed);
    assertThat(a.survivors).isDeepEqualTo(b.survivors);
    assertThat(a.allSurvivors).isDeepEqualTo(b.allSurvivors);
  }

  @Property(tries = 100)
  void tallerPlantsAreNeverControlledBetter(@ForAll long seed) {
    Random random = new Random(seed);
    Kernel kernel = Kernels.of(RandomPrograms.field(random));
    Plan plan = RandomPrograms.plan(random);
    for (int w = 0; w < kernel.traces().weeds().size(); w++) {
      for (Position.Phase phase : Position.Phase.values()) {
        FoliarTable t = kernel.effects().of(plan.mix()).foliar(w, phase);
        for (int b = 0; b < kernel.traces().weeds().get(w).biotypes().size(); b++) {
          for (int k = 1; k < HeightClasses.COUNT; k++) {
            assertThat(t.survival(b, k)).isGreaterThanOrEqualTo(t.survival(b, k - 1));
          }
        }
      }
    }
  }

  @Property(tries = 30)
  void whatIsShownIsWhatTheSearchScores(@ForAll long seed) {
    Random random = new Random(seed);
    Kernel kernel = Kernels.of(RandomPrograms.field(random));
    List<Plan> plans = RandomPrograms.plans(random, 3);
    SeasonOutcome shown =
        SeasonWalk.walk(
            Fixtures.book(),
            kernel,
            Sprays.program(
                kernel.traces().field().id().value(),
                plans.stream()
                    .map(p -> Sprays.pass(p.day(), p.mix()))
                    .toArray(org.swathbook.program.Pass[]::new)));
    Score scored = RandomPrograms.score(kernel, plans);
    for (int w = 0; w < shown.weeds().size(); w++) {
      assertThat(shown.weeds().get(w).controlPct()).isEqualTo(scored.controlPct(w));
      assertThat(shown.weeds().get(w).survivorsPerAcre()).isEqualTo(scored.survivorsPerAcre(w));
    }
    for (int y = 0; y < scored.years(); y++) {
      assertThat(shown.years().get(y).lossShare()).isEqualTo(scored.lossShare(y));
    }
  }
}
