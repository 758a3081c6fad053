package org.swathbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import org.swathbook.book.Biotype;
import org.swathbook.book.Resistance;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Site;
import org.swathbook.control.FoliarTable;
import org.swathbook.growth.SplitCohorts;
import org.swathbook.growth.TraceSet;
import org.swathbook.season.RandomPrograms.Line;
import org.swathbook.season.RandomPrograms.Plan;
import org.swathbook.testing.Fixtures;

/**
 * Laws of the whole walk, on random programs without listed interactions. Where a partner closes a
 * window, or takes a pass past its day, the years in which the same passes are made are compared.
 */
class WalkLawsProperties {
  private static final double ROUNDING = 1e-9;
  private static final int[] SITES = {1, 2, 4, 5, 9, 10, 14, 15, 27};

  @Property(tries = 200)
  void aPartnerNeverRaisesEscapes(@ForAll long seed) {
    partner(new Random(seed));
  }

  @Property(tries = 200)
  void moreResistanceNeverRaisesControl(@ForAll long seed) {
    resistance(new Random(seed));
  }

  @Property(tries = 200)
  void oneCohortOrTwoOfTheSameDayAreTheSame(@ForAll long seed) {
    split(new Random(seed));
  }

  @Property(tries = 200)
  void aLaterPassOnTallerPlantsNeverControlsThemBetter(@ForAll long seed) {
    taller(new Random(seed));
  }

  @Property(tries = 200)
  void fewerEscapesNeverSetMoreSeed(@ForAll long seed) {
    seedReturn(new Random(seed));
  }

  @Property(tries = 2000)
  @Tag("slow")
  void allOfThemOften(@ForAll long seed) {
    partner(new Random(seed));
    resistance(new Random(seed));
    split(new Random(seed));
    taller(new Random(seed));
    seedReturn(new Random(seed));
  }

  /** One partner more in one tank: no escape more, and no plant meets fewer effective sites. */
  private static void partner(Random random) {
    Kernel kernel = Kernels.of(RandomPrograms.field(random));
    List<Plan> fewer = some(random);
    int p = random.nextInt(fewer.size());
    List<Line> lines = new ArrayList<>(fewer.get(p).lines());
    Line extra = RandomPrograms.plan(random).lines().get(0);
    if (lines.stream().anyMatch(l -> l.active().equals(extra.active()))) {
      return;
    }
    lines.add(extra);
    List<Plan> more = new ArrayList<>(fewer);
    more.set(p, new Plan(fewer.get(p).day(), lines));
    List<PreparedPass> with = RandomPrograms.prepare(kernel, more);
    List<PreparedPass> without = RandomPrograms.prepare(kernel, fewer);
    ProgramCensus metWith = new ProgramCensus(kernel, with);
    ProgramCensus metWithout = new ProgramCensus(kernel, without);
    Score better = kernel.run(with, Optional.empty(), metWith);
    Score worse = kernel.run(without, Optional.empty(), metWithout);
    for (int y = 0; y < better.years(); y++) {
      if (with.get(p).day(y) == without.get(p).day(y)) {
        noWorse(kernel, y, better, worse);
        for (int w = 0; w < kernel.traces().weeds().size(); w++) {
          double[] a = metWith.metShares(y, w);
          double[] b = metWithout.metShares(y, w);
          assertThat(a[0]).isLessThanOrEqualTo(b[0] + ROUNDING);
          assertThat(a[2]).isGreaterThanOrEqualTo(b[2] - ROUNDING);
        }
      }
    }
  }

  /** More plants that resist, or plants that resist more, or that keep less. */
  private static void resistance(Random random) {
    String field = RandomPrograms.field(random);
    TraceSet traces = Kernels.traces(field);
    List<WeedPressure> weak = new ArrayList<>();
    List<WeedPressure> strong = new ArrayList<>();
    for (WeedPressure w : traces.weeds()) {
      double share = random.nextDouble();
      double larger = share + (1 - share) * random.nextDouble() * random.nextInt(2);
      double leaf = 0.9 * random.nextDouble();
      double soil = 0.9 * random.nextDouble();
      double less = random.nextBoolean() ? 1 : random.nextDouble();
      int site = SITES[random.nextInt(SITES.length)];
      List<Resistance> all = new ArrayList<>();
      all.add(to(site, larger, leaf * less, soil * less));
      if (random.nextBoolean()) {
        all.add(to(SITES[random.nextInt(SITES.length)], larger, 0, 0));
      }
      weak.add(with(w, share, List.of(to(site, share, leaf, soil))));
      strong.add(with(w, larger, all));
    }
    List<Plan> plans = some(random);
    Kernel a = Kernel.of(Fixtures.book(), weeds(traces, weak));
    Kernel b = Kernel.of(Fixtures.book(), weeds(traces, strong));
    Score less = RandomPrograms.score(a, plans);
    Score more = RandomPrograms.score(b, plans);
    for (int y = 0; y < less.years(); y++) {
      noWorse(a, y, less, more);
    }
  }

  private static Resistance to(int site, double share, double leaf, double soil) {
    return new Resistance(
        Optional.of(Site.of(site)),
        Optional.empty(),
        share,
        "",
        Optional.of(new Resistance.Kept(leaf, soil)));
  }

  private static WeedPressure with(WeedPressure w, double share, List<Resistance> all) {
    return new WeedPressure(
        w.field(),
        w.weed(),
        w.perM2(),
        w.driver(),
        List.of(new Biotype(1 - share, List.of()), new Biotype(share, all)),
        all,
        "");
  }

  private static TraceSet weeds(TraceSet of, List<WeedPressure> weeds) {
    return new TraceSet(of.field(), of.crop(), weeds, of.years());
  }

  private static void split(Random random) {
    String field = RandomPrograms.field(random);
    Kernel whole = Kernels.of(field);
    TraceSet traces = SplitCohorts.of(whole.traces(), random.nextDouble(), random.nextDouble());
    Kernel parts = Kernel.of(Fixtures.book(), traces);
    List<Plan> plans = some(random);
    Score a = RandomPrograms.score(whole, plans);
    Score b = RandomPrograms.score(parts, plans);
    for (int y = 0; y < a.years(); y++) {
      assertThat(b.lossShare(y)).isCloseTo(a.lossShare(y), within(1e-12));
      for (int w = 0; w < traces.weeds().size(); w++) {
        assertThat(b.controlPct(w, y)).isCloseTo(a.controlPct(w, y), within(100 * 1e-12));
        double plants = 1e-12 * whole.cell(y, w).totalEmergence;
        assertThat(b.allSurvivorsPerM2(w, y)).isCloseTo(a.allSurvivorsPerM2(w, y), within(plants));
        assertThat(b.exposedShare(w, y)).isCloseTo(a.exposedShare(w, y), within(1e-12));
      }
    }
  }

  /** The same tank some days later in the same phase, on the plants that were up the first time. */
  private static void taller(Random random) {
    Kernel kernel = Kernels.of(RandomPrograms.field(random));
    Plan plan = RandomPrograms.plan(random);
    LocalDate early = kernel.traces().field().plantDate().plusDays(plan.day());
    PreparedPass first = kernel.prepare(plan.mix(), early);
    PreparedPass later = kernel.prepare(plan.mix(), early.plusDays(1 + random.nextInt(14)));
    for (int y = 0; y < kernel.traces().years().size(); y++) {
      DayView a = first.view(y);
      DayView b = later.view(y);
      if (a == null || b == null || first.phase(y) != later.phase(y)) {
        continue;
      }
      for (int w = 0; w < kernel.traces().weeds().size(); w++) {
        FoliarTable t = kernel.effects().of(plan.mix()).foliar(w, first.phase(y));
        for (int c = 0; c < a.up[w]; c++) {
          for (int k = 0; k < kernel.traces().weeds().get(w).biotypes().size(); k++) {
            assertThat(t.survival(k, b.heightClass[w][c]))
                .isGreaterThanOrEqualTo(t.survival(k, a.heightClass[w][c]));
          }
        }
      }
    }
  }

  private static void seedReturn(Random random) {
    Kernel kernel = Kernels.of(RandomPrograms.field(random));
    Score treated = RandomPrograms.score(kernel, some(random));
    Score not = kernel.score(List.of());
    for (int y = 0; y < treated.years(); y++) {
      for (int w = 0; w < kernel.traces().weeds().size(); w++) {
        double most =
            treated.allSurvivorsPerM2(w, y)
                * kernel.traces().weeds().get(w).weed().seed().fecundity();
        assertThat(treated.seedReturnPerM2(w, y)).isBetween(0.0, most * (1 + ROUNDING));
        assertThat(treated.seedReturnPerM2(w, y))
            .isLessThanOrEqualTo(not.seedReturnPerM2(w, y) * (1 + ROUNDING));
      }
    }
  }

  private static List<Plan> some(Random random) {
    List<Plan> out = new ArrayList<>(RandomPrograms.plans(random, 2));
    out.add(RandomPrograms.plan(random));
    out.sort((a, b) -> Integer.compare(a.day(), b.day()));
    return out;
  }

  private static void noWorse(Kernel kernel, int y, Score better, Score worse) {
    assertThat(better.lossShare(y)).isLessThanOrEqualTo(worse.lossShare(y) + ROUNDING);
    for (int w = 0; w < kernel.traces().weeds().size(); w++) {
      assertThat(better.controlPct(w, y)).isGreaterThanOrEqualTo(worse.controlPct(w, y) - ROUNDING);
      assertThat(better.survivorsPerM2(w, y))
          .isLessThanOrEqualTo(worse.survivorsPerM2(w, y) + ROUNDING);
      assertThat(better.allSurvivorsPerM2(w, y))
          .isLessThanOrEqualTo(worse.allSurvivorsPerM2(w, y) + ROUNDING);
      assertThat(better.seedReturnPerM2(w, y))
          .isLessThanOrEqualTo(worse.seedReturnPerM2(w, y) * (1 + ROUNDING) + ROUNDING);
      assertThat(better.exposedShare(w, y))
          .isLessThanOrEqualTo(worse.exposedShare(w, y) + ROUNDING);
    }
  }
}
