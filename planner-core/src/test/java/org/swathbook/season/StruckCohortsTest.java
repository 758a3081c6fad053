package org.swathbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.book.HouseRules;
import org.swathbook.control.FoliarTable;
import org.swathbook.control.Setback;

/** Passes through leaves, cohort by cohort as they are defined, without regard to equal heights. */
class StruckCohortsTest {
  private static final Kernel KERNEL = Kernels.of("ND-1");
  private static final LocalDate PLANTED = KERNEL.traces().field().plantDate();
  private static final HouseRules HOUSE = KERNEL.house();

  private static final double[] PAUSE_DEGREE_DAYS =
      Arrays.stream(Setback.values()).mapToDouble(Setback::pauseDegreeDays).toArray();

  /** Share that plants have cost by the day of a pass, invented. */
  private static final double ALREADY = 0.125;

  /** A cohort by the definitions: what is alive, what its dead cost, its setback. */
  private static final class Cohort {
    double alive = 1;
    double cost;
    boolean met;
    double delay;
    double floor;

    void strike(double[] survival, FoliarTable table, int biotype, DayView view, int weed, int c) {
      double untouched = view.age[weed][c];
      double age = delay > 0 ? Math.max(floor, untouched - delay) : untouched;
      int k = delay > 0 ? KERNEL.clock(weed).classAt(age) : view.heightClass[weed][c];
      if (survival[k] >= 1) {
        return;
      }
      double miss = view.canopy ? HOUSE.missUnderCanopy() : HOUSE.missFoliar();
      double after = alive * (miss + (1 - miss) * survival[k]);
      cost += (alive - after) * ALREADY;
      alive = after;
      met |= 1 - survival[k] >= HOUSE.effectiveSite();
      int rank = table.setbackRank(biotype);
      if (rank > 0) {
        floor = Math.min(age, KERNEL.clock(weed).ageAfter(rank, k));
        delay = untouched - floor + PAUSE_DEGREE_DAYS[rank];
      }
    }
  }

  private static List<PreparedPass> passes(double lbPerAcre, int... daysAfterPlanting) {
    List<PreparedPass> out = new ArrayList<>();
    for (int d : daysAfterPlanting) {
      out.add(KERNEL.made(Sprays.mix("glufosinate-ammonium", lbPerAcre), PLANTED.plusDays(d)));
    }
    return out;
  }

  /** One pass, two with what the first set back, three, and one below a closed crop. */
  @ParameterizedTest
  @CsvSource({"0.66, 25, 25, 25", "0.3, 24, 33, 33", "0.4, 20, 30, 41", "0.66, 30, 45, 75"})
  void eachCohortIsStruckAtItsOwnHeight(double rate, int first, int second, int third) {
    List<PreparedPass> passes = passes(rate, first, second, third);
    int setBack = 0;
    int effective = 0;
    int spared = 0;
    for (int y = 0; y < KERNEL.traces().years().size(); y++) {
      for (int w = 0; w < KERNEL.traces().weeds().size(); w++) {
        YearWeed cell = KERNEL.cell(y, w);
        StruckCohorts struck = new StruckCohorts(HOUSE, cell.cohorts);
        for (int b = 0; b < cell.shares.length; b++) {
          struck.begin(cell.cohorts);
          Cohort[] expected = new Cohort[cell.cohorts];
          for (int c = 0; c < expected.length; c++) {
            expected[c] = new Cohort();
          }
          for (PreparedPass pass : passes) {
            DayView view = pass.view(y);
            FoliarTable table = pass.foliar(y, w, Optional.empty());
            struck.strike(table, b, view, w, KERNEL.clock(w), ALREADY, null);
            for (int c = view.from[w]; c < view.up[w]; c++) {
              expected[c].strike(table.survival(b), table, b, view, w, c);
            }
          }
          for (int c = 0; c < expected.length; c++) {
            Cohort e = expected[c];
            assertThat(struck.alive[c]).isCloseTo(e.alive, within(1e-12));
            assertThat(struck.cost[c]).isCloseTo(e.cost, within(1e-12));
            assertThat(struck.met[c]).isEqualTo(e.met);
            assertThat(struck.isSetBack(c)).isEqualTo(e.delay > 0);
            if (e.delay > 0) {
              double[] ages = passes.get(2).view(y).age[w];
              assertThat(struck.age(c, ages)).isEqualTo(Math.max(e.floor, ages[c] - e.delay));
            }
            setBack += e.delay > 0 ? 1 : 0;
            effective += e.met ? 1 : 0;
            spared += e.alive == 1 ? 1 : 0;
          }
        }
      }
    }
    assertThat(setBack).isPositive();
    assertThat(effective).isPositive();
    assertThat(spared).isPositive();
  }

  /** A size that was seen holds the setbacks before it; the dead stay dead. */
  @Test
  void aSightForgetsSetbacksAndNothingElse() {
    PreparedPass pass = passes(0.4, 30).get(0);
    DayView view = pass.view(0);
    YearWeed cell = KERNEL.cell(0, 0);
    StruckCohorts struck = new StruckCohorts(HOUSE, cell.cohorts);
    struck.begin(cell.cohorts);
    struck.strike(pass.foliar(0, 0, Optional.empty()), 0, view, 0, KERNEL.clock(0), ALREADY, null);
    double[] alive = struck.alive.clone();
    assertThat(anySetBack(struck, cell.cohorts)).isTrue();
    struck.forgetSetbacks();
    assertThat(anySetBack(struck, cell.cohorts)).isFalse();
    assertThat(struck.alive).isEqualTo(alive);
    assertThat(alive[view.from[0]]).isLessThan(1);
  }

  private static boolean anySetBack(StruckCohorts struck, int cohorts) {
    for (int c = 0; c < cohorts; c++) {
      if (struck.isSetBack(c)) {
        return true;
      }
    }
    return false;
  }
}
