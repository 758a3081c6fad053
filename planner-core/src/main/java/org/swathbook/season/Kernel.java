package org.swathbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Book;
import org.swathbook.book.CropEconomics;
import org.swathbook.book.HouseRules;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Site;
import org.swathbook.control.ColdDay;
import org.swathbook.control.ColdDays;
import org.swathbook.control.Effects;
import org.swathbook.control.FoliarTable;
import org.swathbook.control.MixEffect;
import org.swathbook.control.ResistanceFactors;
import org.swathbook.control.SoilEffect;
import org.swathbook.control.TankActive;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.Phases;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Mix;
import org.swathbook.season.loss.Removal;
import org.swathbook.season.loss.Seedbank;
import org.swathbook.season.loss.YieldLoss;

/**
 * The one engine: what passes do to a field through all its weather years. Whoever shows, checks or
 * searches scores here, so a number is the same everywhere to the last bit.
 *
 * <p>A cell is a cohort of a biotype of a weed in a year. It carries the share alive, a plain
 * product of doubles in the order of the passes (foliar before soil in each, actives in canonical
 * order), the delay that foliar passes have cost its growth, and what its dead have already cost
 * the crop. One kernel serves one field; it keeps what it computes and may be used by several
 * threads.
 */
public final class Kernel {
  private final TraceSet traces;
  private final HouseRules house;
  private final Effects effects;
  private final YieldLoss yieldLoss;
  private final double dollarsPerAcre;
  private final Removal removal;
  private final PassWindows windows;
  private final HeightClock[] clocks;
  private final YearWeed[][] grid;
  private final DayViews views;
  private final CohortPlaces cohorts;
  private final Map<OwnSoil.Key, OwnSoil> ownSoil = new ConcurrentHashMap<>();
  private volatile @Nullable Score untreated;
  private volatile @Nullable ColdDays cold;
  private final Map<LocalDate, PassTiming> timings = new ConcurrentHashMap<>();

  private Kernel(Book book, TraceSet traces, SharedKernels shared) {
    this.traces = traces;
    this.house = book.house();
    this.effects = new Effects(shared.effects(), traces);
    this.yieldLoss = YieldLoss.of(traces.field().crop(), traces.weeds());
    CropEconomics economics = book.crops().get(traces.field().crop());
    if (economics == null) {
      throw new IllegalArgumentException("the book has no price for " + traces.field().crop());
    }
    this.dollarsPerAcre = traces.field().yieldGoalBuPerAcre() * economics.dollarsPerBu();
    this.removal = Removal.of(traces.crop(), traces.field().rowSpacingCm());
    this.windows = new PassWindows(traces, house);
    int weeds = traces.weeds().size();
    this.clocks = new HeightClock[weeds];
    this.grid = new YearWeed[traces.years().size()][weeds];
    for (int w = 0; w < weeds; w++) {
      clocks[w] =
          shared.clock(traces.weeds().get(w).weed(), traces.years().get(0).cohorts(w).model());
      for (int y = 0; y < grid.length; y++) {
        grid[y][w] = new YearWeed(traces.years().get(y), w, traces.weeds().get(w), removal);
      }
    }
    this.views = new DayViews(traces, clocks, removal);
    this.cohorts = CohortPlaces.of(traces);
  }

  public static Kernel of(Book book, TraceSet traces) {
    return of(book, traces, new SharedKernels(book.catalog()));
  }

  /**
   * The same for one of many fields.
   *
   * @param shared of the catalog of them all
   */
  public static Kernel of(Book book, TraceSet traces, SharedKernels shared) {
    return new Kernel(book, traces, shared);
  }

  public TraceSet traces() {
    return traces;
  }

  /** Places of the driver weeds among the field's weeds. */
  public List<Integer> drivers() {
    List<Integer> out = new ArrayList<>();
    for (int w = 0; w < traces.weeds().size(); w++) {
      if (traces.weeds().get(w).driver().isDriver()) {
        out.add(w);
      }
    }
    return List.copyOf(out);
  }

  public Effects effects() {
    return effects;
  }

  /** Days, windows and effects of a mix on a planned date in every year. */
  public PreparedPass prepare(Mix mix, LocalDate planned) {
    return prepare(mix, effects.of(mix), planned);
  }

  /** The same with the effect of the mix at hand, for a search that puts it on many dates. */
  public PreparedPass prepare(Mix mix, MixEffect effect, LocalDate planned) {
    PassTiming timing = timings.computeIfAbsent(planned, d -> Timings.at(traces, d));
    int years = traces.years().size();
    int[] day = new int[years];
    boolean[] met = new boolean[years];
    PassWindows.OfTank open = windows.of(effect.actives());
    for (int y = 0; y < years; y++) {
      SeasonTrace trace = traces.years().get(y);
      int d = timing.years().get(y).day();
      day[y] = d < trace.days() && open.allow(y, d) ? d : -1;
      met[y] = day[y] >= 0 && open.met(y, trace.dayOf(planned));
    }
    return prepared(mix, effect, timing, day, met, false);
  }

  /**
   * A pass that was made, or is taken as made, on this very day of every year, whatever its labels
   * and the weather say.
   *
   * @throws IllegalArgumentException when a year of the field does not have the day
   */
  public PreparedPass made(Mix mix, LocalDate on) {
    return made(mix, Timings.on(traces, on));
  }

  /** The same with its day in every year at hand, for many mixes on one date. */
  PreparedPass made(Mix mix, PassTiming timing) {
    int[] day = new int[timing.years().size()];
    for (int y = 0; y < day.length; y++) {
      day[y] = timing.years().get(y).day();
    }
    boolean[] met = new boolean[day.length];
    java.util.Arrays.fill(met, true);
    return prepared(mix, effects.of(mix), timing, day, met, true);
  }

  private PreparedPass prepared(
      Mix mix, MixEffect effect, PassTiming timing, int[] day, boolean[] met, boolean made) {
    int[] soilActive = withSoilActivity(effect.actives());
    int years = day.length;
    int weeds = traces.weeds().size();
    Position.Phase[] phase = new Position.Phase[years];
    DayView[] view = new DayView[years];
    SoilEffect[][][] soil = new SoilEffect[years][][];
    for (int y = 0; y < years; y++) {
      SeasonTrace trace = traces.years().get(y);
      int d = timing.years().get(y).day();
      boolean inSeason = day[y] >= 0 && d <= trace.harvestDay();
      phase[y] = Phases.of(trace, Math.min(d, trace.days() - 1));
      view[y] = d < trace.days() ? views.of(y, d) : null;
      soil[y] = new SoilEffect[soilActive.length][];
      for (int j = 0; j < soilActive.length; j++) {
        List<SoilEffect> onWeeds = inSeason ? effect.soil(soilActive[j], y, d) : List.of();
        soil[y][j] = new SoilEffect[weeds];
        for (int w = 0; w < weeds; w++) {
          soil[y][j][w] = onWeeds.isEmpty() ? SoilEffect.NONE : onWeeds.get(w);
        }
      }
    }
    return new PreparedPass(
        mix,
        effect,
        timing,
        day,
        met,
        made,
        !made && isInTheCold(effect, timing),
        phase,
        view,
        soilActive,
        soil,
        keeps(effect.actives(), soilActive),
        ownSoil.computeIfAbsent(OwnSoil.Key.of(effect, soilActive, day), k -> new OwnSoil(weeds)));
  }

  /** Whether the cold slows something of a tank on most days about those of a pass. */
  private boolean isInTheCold(MixEffect effect, PassTiming timing) {
    if (effect.actives().stream().noneMatch(a -> ColdDay.slows(a.ingredient()))) {
      return false;
    }
    ColdDays known = cold;
    if (known == null) {
      known = ColdDays.of(traces);
      cold = known;
    }
    return known.isMostly(timing);
  }

  private static int[] withSoilActivity(List<TankActive> actives) {
    int[] places = new int[actives.size()];
    int n = 0;
    for (int a = 0; a < places.length; a++) {
      if (actives.get(a).ingredient().hasSoilActivity()) {
        places[n++] = a;
      }
    }
    return java.util.Arrays.copyOf(places, n);
  }

  private double[][][] keeps(List<TankActive> actives, int[] soilActive) {
    double[][][] out = new double[soilActive.length][][];
    for (int j = 0; j < out.length; j++) {
      out[j] = new double[traces.weeds().size()][];
      for (int w = 0; w < out[j].length; w++) {
        WeedPressure p = traces.weeds().get(w);
        out[j][w] = new double[p.biotypes().size()];
        for (int b = 0; b < out[j][w].length; b++) {
          out[j][w][b] =
              ResistanceFactors.soil(
                  p.weed(), p.biotypes().get(b), actives.get(soilActive[j]).ingredient());
        }
      }
    }
    return out;
  }

  /** What comes of the field with no pass at all. */
  public Score untreated() {
    Score now = untreated;
    if (now == null) {
      now = score(List.of());
      untreated = now;
    }
    return now;
  }

  /** What the passes do; given in the order of their planned dates. */
  public Score score(List<PreparedPass> passes) {
    return run(passes, Optional.empty(), null, null);
  }

  /** The same with a site that does nothing to any plant, though its products are sprayed. */
  public Score score(List<PreparedPass> passes, Site without) {
    return run(passes, Optional.of(without), null, null);
  }

  /** What the passes leave to cost the crop, cohort by cohort. */
  public Loads loads(List<PreparedPass> passes) {
    double[] loads = new double[cohorts.size()];
    Score score = runCompeting(passes, loads);
    for (int y = 0; y < grid.length; y++) {
      double x = 0;
      for (int i = cohorts.from(y, 0); i < cohorts.to(y, clocks.length - 1); i++) {
        x += loads[i];
      }
      // Dollars that all of the year lost, shared out by what each has on its account.
      double perLoad = x > 0 ? score.loss[y] * dollarsPerAcre / grid.length / x : 0;
      for (int i = cohorts.from(y, 0); i < cohorts.to(y, clocks.length - 1); i++) {
        loads[i] *= perLoad;
      }
    }
    return new Loads(score, loads);
  }

  /** What each cohort brings into the yield loss of its year: I times the plants that count. */
  double[] competing(List<PreparedPass> passes) {
    double[] out = new double[cohorts.size()];
    runCompeting(passes, out);
    return out;
  }

  private Score runCompeting(List<PreparedPass> passes, double[] loads) {
    Score score = run(passes, Optional.empty(), null, loads);
    for (int y = 0; y < grid.length; y++) {
      for (int w = 0; w < clocks.length; w++) {
        for (int i = cohorts.from(y, w); i < cohorts.to(y, w); i++) {
          loads[i] *= yieldLoss.perPlant(w);
        }
      }
    }
    return score;
  }

  /**
   * Plants/m² of some weeds alive when control is rated, as an eye weighs them, by cohort; a site
   * may do nothing. Of the other weeds nothing is told.
   */
  double[] rated(List<PreparedPass> passes, Optional<Site> without, List<Integer> weeds) {
    double[] rated = new double[cohorts.size()];
    CellWalk walk = new CellWalk(passes, without, house, clocks, cohorts.most(), null, null, rated);
    for (int y = 0; y < grid.length; y++) {
      for (int w : weeds) {
        walk.tellFrom(cohorts.from(y, w));
        controlPct(walk, y, w);
      }
    }
    return rated;
  }

  Score run(List<PreparedPass> passes, Optional<Site> without, @Nullable Census census) {
    return run(passes, without, census, null);
  }

  private Score run(
      List<PreparedPass> passes,
      Optional<Site> without,
      @Nullable Census census,
      double @Nullable [] loads) {
    for (int p = 1; p < passes.size(); p++) {
      if (passes.get(p).planned().isBefore(passes.get(p - 1).planned())) {
        throw new IllegalArgumentException("passes come in the order of their dates");
      }
    }
    Score score = new Score(grid.length, clocks.length, dollarsPerAcre);
    CellWalk walk =
        new CellWalk(passes, without, house, clocks, cohorts.most(), census, loads, null);
    for (int y = 0; y < grid.length; y++) {
      double x = 0;
      for (int w = 0; w < clocks.length; w++) {
        score.controlPct[w][y] = controlPct(walk, y, w);
        x += yieldLoss.perPlant(w) * walk.load();
        score.survivors[w][y] = walk.survivors();
        score.allSurvivors[w][y] = walk.allSurvivors();
        score.seedReturn[w][y] =
            Seedbank.returnPerM2(traces.weeds().get(w).weed().seed(), walk.seeding());
        score.exposed[w][y] = walk.exposedShare();
        score.exposedToNothing[w][y] = walk.exposedToNothing();
      }
      score.loss[y] = yieldLoss.share(x);
    }
    return score;
  }

  CellWalk walk(List<PreparedPass> passes, Optional<Site> without) {
    return new CellWalk(passes, without, house, clocks, cohorts.most(), null, null, null);
  }

  /** Walks a weed in a year and tells its control as an eye rates it, percent. */
  double controlPct(CellWalk walk, int year, int weed) {
    YearWeed cell = grid[year][weed];
    walk.weed(year, weed, cell, traces.years().get(year).harvestDay());
    double untreated = cell.untreatedWhenRated + walk.killedBeforeCounts();
    return untreated > 0 ? 100 * (1 - walk.ratedAlive() / untreated) : 100;
  }

  /** Tells what of some weeds stands at the last of the passes in every year. */
  void standingAtLast(List<PreparedPass> passes, List<Integer> weeds, Census census) {
    standing(passes, passes.size() - 1, weeds, census);
  }

  /**
   * Tells what of every weed stands at every pass in every year: of a walk all that a census sees.
   */
  void standing(List<PreparedPass> passes, Census census) {
    standing(passes, 0, IntStream.range(0, clocks.length).boxed().toList(), census);
  }

  private void standing(
      List<PreparedPass> passes, int toldFrom, List<Integer> weeds, Census census) {
    CellWalk walk =
        new CellWalk(passes, Optional.empty(), house, clocks, cohorts.most(), census, null, null);
    for (int y = 0; y < grid.length; y++) {
      int harvest = traces.years().get(y).harvestDay();
      for (int w : weeds) {
        walk.standing(y, w, grid[y][w], harvest, toldFrom);
      }
    }
  }

  public YieldLoss yieldLoss() {
    return yieldLoss;
  }

  /** Weed-free yield times price, dollars on one acre. */
  public double weedFreeDollars() {
    return dollarsPerAcre;
  }

  /**
   * Share of what plants would cost alive that they have cost by a day; 0 before the crop is up.
   */
  double removed(int year, int day, boolean residualInTheGround) {
    SeasonTrace trace = traces.years().get(year);
    int on = Math.min(day, trace.days() - 1);
    return on < trace.emergenceDay() ? 0 : removal.share(trace.leafStages(on), residualInTheGround);
  }

  CohortPlaces cohorts() {
    return cohorts;
  }

  HeightClock clock(int weed) {
    return clocks[weed];
  }

  YearWeed cell(int year, int weed) {
    return grid[year][weed];
  }

  HouseRules house() {
    return house;
  }

  FoliarTable foliar(PreparedPass pass, int year, int weed) {
    return pass.foliar(year, weed, Optional.empty());
  }
}
