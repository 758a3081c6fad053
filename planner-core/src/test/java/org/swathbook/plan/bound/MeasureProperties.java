package org.swathbook.plan.bound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.statistics.Statistics;
import org.swathbook.catalog.Site;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Walked;
import org.swathbook.season.Kernel;
import org.swathbook.season.PreparedPass;
import org.swathbook.season.Score;
import org.swathbook.season.WithoutSite;

/**
 * What the bound takes a program to leave: never more than it does leave, and on blends of programs
 * a convex function of them.
 */
class MeasureProperties {
  /** Of sums of thousands of terms, dollars on an acre or points. */
  private static final double ROUNDING = 1e-6;

  private static final int PROGRAMS = 12;

  @Property(tries = 40)
  void noProgramLeavesLess(@ForAll long seed) {
    DrawnTanks.of(seed).ifPresent(d -> leavesNoLess(d, new Random(seed)));
  }

  @Property(tries = 2000)
  @Tag("slow")
  void noneOfThousandsLeavesLess(@ForAll long seed) {
    DrawnTanks.of(seed).ifPresent(d -> leavesNoLess(d, new Random(seed)));
  }

  @Property(tries = 40)
  void aTangentLiesBelowEveryBlend(@ForAll long seed) {
    DrawnTanks.of(seed).ifPresent(d -> tangent(d, new Random(seed)));
  }

  @Property(tries = 2000)
  @Tag("slow")
  void everyTangentLiesBelow(@ForAll long seed) {
    DrawnTanks.of(seed).ifPresent(d -> tangent(d, new Random(seed)));
  }

  private static void leavesNoLess(DrawnTanks drawn, Random random) {
    Kernel kernel = drawn.programs.evaluator.kernel();
    List<Walked> walked = drawn.walked();
    Measure loss = LossMeasure.of(drawn.all, kernel);
    for (int i = 0; i < PROGRAMS && !walked.isEmpty(); i++) {
      Walked w = walked.get(random.nextInt(walked.size()));
      if (w.draft().stops().isEmpty()) {
        continue;
      }
      Blend whole = Blend.of(drawn.tanks(w.draft()));
      List<PreparedPass> passes = passes(drawn, w);
      Score score = kernel.score(passes);
      assertThat(whole.cost() + drawn.programs.evaluator.passesMade().cost())
          .isCloseTo(w.cost().dollars(), within(0.0051));
      double lost = loss.of(whole).total();
      assertThat(lost).isLessThanOrEqualTo(score.lossDollarsPerAcre() + ROUNDING);
      Statistics.label("of the loss, tenths").collect(tenths(lost, score.lossDollarsPerAcre()));
      for (int weed : kernel.drivers()) {
        double control = ControlMeasure.of(drawn.all, weed, Optional.empty()).of(whole).total();
        assertThat(control).isLessThanOrEqualTo(100 - score.controlPct(weed) + ROUNDING);
        for (Site site : drawn.all.sites()) {
          double without = ControlMeasure.of(drawn.all, weed, Optional.of(site)).of(whole).total();
          double walkedWithout = WithoutSite.of(kernel, passes, site, score).controlPct(weed);
          assertThat(without).isLessThanOrEqualTo(100 - walkedWithout + ROUNDING);
        }
      }
    }
  }

  private static List<PreparedPass> passes(DrawnTanks drawn, Walked program) {
    List<PreparedPass> out = new ArrayList<>(drawn.programs.evaluator.passesMade().passes());
    program.draft().stops().forEach(s -> out.add(drawn.programs.evaluator.prepare(s)));
    return out;
  }

  private static void tangent(DrawnTanks drawn, Random random) {
    Kernel kernel = drawn.programs.evaluator.kernel();
    List<Measure> measures =
        List.of(
            LossMeasure.of(drawn.all, kernel),
            ControlMeasure.of(drawn.all, 0, Optional.empty()),
            ControlMeasure.of(drawn.all, 0, drawn.all.sites().stream().findFirst()));
    for (Measure m : measures) {
      for (int i = 0; i < PROGRAMS; i++) {
        Blend at = blend(drawn, random);
        Blend other = blend(drawn, random);
        Measure.Left left = m.of(at);
        Prices prices = new Prices(drawn.all, Map.of());
        left.addTo(prices, 1);
        double change = other.at(prices) - other.cost() - at.at(prices) + at.cost();
        double there = m.of(other).total();
        assertThat(left.total() + change)
            .isLessThanOrEqualTo(there + ROUNDING * (1 + left.total()));
        Statistics.label("the tangent falls below nothing").collect(left.total() + change < 0);
      }
    }
  }

  /** One to four programs in shares. */
  private static Blend blend(DrawnTanks drawn, Random random) {
    Blend out = Blend.NOTHING;
    int many = 1 + random.nextInt(4);
    for (int i = 0; i < many; i++) {
      List<Draft> drafts = drawn.programs.drafts;
      out =
          out.towards(drawn.tanks(drafts.get(random.nextInt(drafts.size()))), random.nextDouble());
    }
    return out;
  }

  private static String tenths(double part, double whole) {
    return whole > 0 ? 10 * (int) Math.floor(10 * part / whole) + " %" : "nothing to lose";
  }
}
