package org.swathbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.testing.Fixtures;

class SeasonWalkTest {

  @Test
  void show() {
    TraceSet traces = TraceBuilder.build(Fixtures.book(), Fixtures.field("ND-1"));
    SeasonOutcome o =
        SeasonWalk.walk(
            Fixtures.book(),
            traces,
            Sprays.program(
                "ND-1",
                Sprays.pass(0, Sprays.mix("metribuzin", 0.38, "flumioxazin", 0.08)),
                Sprays.pass(
                    26,
                    Sprays.mix(
                        "2,4-D choline",
                        0.95,
                        "glufosinate-ammonium",
                        0.59,
                        "glyphosate",
                        1.125,
                        "S-metolachlor",
                        1.0))));
    System.out.println(
        "loss " + o.loss() + " untreated " + o.untreatedLoss() + " wc " + o.windowConfidencePct());
    for (PassOutcome p : o.passes()) {
      System.out.println(
          p.planned()
              + " "
              + p.timing().medianDate()
              + " "
              + p.cropStage()
              + " missed "
              + p.missedYears());
      for (PassWeed w : p.weeds()) {
        System.out.printf(
            "   %s stands %s %.1f/m2 p50 %.1f in p90 %.1f (%.1f-%.1f)%n",
            w.weed(),
            w.stands(),
            w.medianPerM2(),
            w.p50Cm() / 2.54,
            w.p90Cm() / 2.54,
            w.p90LowCm() / 2.54,
            w.p90HighCm() / 2.54);
        System.out.println("       foliar " + w.foliar());
        System.out.println("       soil " + w.soil());
      }
    }
    for (WeedOutcome w : o.weeds()) {
      System.out.printf(
          "%s control %.2f worst %.2f exposed %.1f worst5 %.1f nothing %.1f surv %.0f all %.0f met %.0f/%.0f/%.0f weakest %s %.1f %s %s%n",
          w.pressure().weed().id(),
          w.controlPct(),
          w.worstYearControlPct(),
          w.exposedPct(),
          w.exposedWorstFifthPct(),
          w.exposedToNothingPct(),
          w.survivorsPerAcre(),
          w.allSurvivorsPerAcre(),
          w.metNonePct(),
          w.metOnePct(),
          w.metTwoOrMorePct(),
          w.weakestSite(),
          w.controlPctWithoutWeakest(),
          w.overlaps(),
          w.unknownActives());
    }
    for (YearOutcome y : o.years()) {
      System.out.println(y);
    }
    for (var t : traces.years()) {
      System.out.println(
          t.year()
              + " plant "
              + t.plantingDay()
              + " up "
              + t.emergenceDay()
              + " canopy "
              + t.canopyDay()
              + " harvest "
              + t.harvestDay()
              + " needed "
              + t.neededUntil(0)
              + " cohorts "
              + t.cohorts(0).count()
              + " "
              + t.cohorts(1).count()
              + " "
              + t.cohorts(2).count());
    }
    assertThat(o.weeds()).hasSize(3);
  }
}
