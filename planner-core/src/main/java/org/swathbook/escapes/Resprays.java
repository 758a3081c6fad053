package org.swathbook.escapes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.swathbook.book.Book;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.WeedId;
import org.swathbook.check.MixJudge;
import org.swathbook.measure.Inches;
import org.swathbook.measure.Money;
import org.swathbook.plan.choice.DayDoses;
import org.swathbook.program.Dose;
import org.swathbook.program.SeenWeed;
import org.swathbook.program.SprayJob;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * Looks for a product that may go on the survivors, among the planner's own legal doses, and for
 * two of different sites in one tank.
 */
final class Resprays {
  /** Regrowth that has leaves enough to take up a spray, cm: 2 in, common practice, no source. */
  private static final double FRESH_CM = Inches.toCm(2);

  /** Growth of survivors on a warm day, cm: 4 in over 12 days (default). */
  private static final double GROWTH_CM_A_DAY = Inches.toCm(4) / 12;

  /** So long is a first legal day waited for: default, ours. */
  private static final int PATIENCE_DAYS = 14;

  private static final int LOOK_AHEAD_DAYS = 56;

  /** So many tanks of two are shown: default, ours. */
  private static final int MOST_TANKS = 3;

  /** What controls less of the survivors is not offered: half-effective begins here elsewhere. */
  private static final double HALF_EFFECTIVE_PCT = 50;

  private final FieldAfterPass scene;
  private final FieldAfterPass clean;
  private final Book book;
  private final DayDoses doses;
  private final List<WeedReading> alive;
  private final Set<WeedId> survivors = new TreeSet<>();
  private final SurvivorHeights heights;
  private final List<Site> failed;
  private final boolean plainCause;
  private final LocalDate sensible;
  private final LocalDate today;
  private final LocalDate end;
  private final List<ResprayOption> options = new ArrayList<>();
  private final List<RefusedRespray> refused = new ArrayList<>();

  private Resprays(
      FieldAfterPass scene,
      FieldAfterPass clean,
      List<WeedReading> weeds,
      List<SeenWeed> seen,
      LocalDate today) {
    this.scene = scene;
    this.clean = clean;
    this.book = scene.book();
    this.today = today;
    this.doses = DayDoses.of(book, scene.traces());
    this.alive = weeds.stream().filter(w -> w.surviving() > 0).toList();
    alive.forEach(w -> survivors.add(w.weed()));
    TreeSet<Site> sites = new TreeSet<>();
    alive.forEach(w -> sites.addAll(w.sites()));
    this.failed = List.copyOf(sites);
    // One weed whose failure nothing explains is enough to keep its sites away.
    this.plainCause =
        alive.stream()
            .allMatch(w -> !w.suspicion().isWorthATest() && !w.suspicion().plainCauses().isEmpty());
    this.heights = SurvivorHeights.of(scene, survivors, seen);
    this.sensible = sensible(alive, seen, today);
    LocalDate lastWalked = LocalDate.of(book.season(), 10, 31);
    LocalDate harvest = scene.field().harvestDate().orElse(lastWalked);
    this.end = harvest.isBefore(lastWalked) ? harvest : lastWalked;
  }

  record Found(List<ResprayOption> options, List<RefusedRespray> refused, LocalDate sensible) {}

  /**
   * @param clean the same field with the counted plants gone
   */
  static Found of(
      FieldAfterPass scene,
      FieldAfterPass clean,
      List<WeedReading> weeds,
      List<SeenWeed> seen,
      LocalDate today) {
    Resprays r = new Resprays(scene, clean, weeds, seen, today);
    r.doses.byActive().forEach(r::active);
    r.tanks();
    // Sites that have not failed first; then what is expected to kill more, then what pays more.
    r.options.sort(
        Comparator.comparing(ResprayOption::failedSite)
            .thenComparingLong((ResprayOption o) -> -Math.round(o.controlPct()))
            .thenComparing(o -> o.costPerAcre().minus(o.savesPerAcre()))
            .thenComparing(ResprayOption::key));
    r.refused.sort(
        Comparator.comparing(RefusedRespray::reason).thenComparing(n -> n.active().name()));
    return new Found(r.options, r.refused, r.sensible);
  }

  /** Not before the plants can be judged, nor before those measured have fresh leaves again. */
  private static LocalDate sensible(List<WeedReading> alive, List<SeenWeed> seen, LocalDate today) {
    LocalDate out = today;
    for (WeedReading w : alive) {
      out = w.judgedFrom().isAfter(out) ? w.judgedFrom() : out;
    }
    for (SeenWeed s : seen) {
      OptionalDouble grown = s.newGrowthCm();
      boolean lives = alive.stream().anyMatch(w -> w.weed().equals(s.weed()));
      if (lives && grown.isPresent() && grown.getAsDouble() < FRESH_CM) {
        long days = (long) Math.ceil((FRESH_CM - grown.getAsDouble()) / GROWTH_CM_A_DAY - 1e-9);
        LocalDate fresh = today.plusDays(days);
        out = fresh.isAfter(out) ? fresh : out;
      }
    }
    return out;
  }

  private void active(List<Dose> rates) {
    Ingredient active = rates.get(0).actives().get(0).ingredient();
    if (!active.hasFoliarActivity()
        || alive.stream().noneMatch(w -> Readings.works(book, active, w.weed()))) {
      return;
    }
    boolean again = failed.contains(active.site());
    if (again && !plainCause) {
      refused.add(RefusedRespray.failed(active));
      return;
    }
    for (Dose dose : rates) {
      Optional<LocalDate> first = firstLegal(List.of(dose));
      if (first.isPresent()) {
        option(dose, again, first.get());
        return;
      }
    }
    refused.add(why(active, rates.get(rates.size() - 1)));
  }

  private Optional<LocalDate> firstLegal(List<Dose> tank) {
    for (int i = 0; i <= PATIENCE_DAYS; i++) {
      LocalDate day = sensible.plusDays(i);
      if (!day.isAfter(end) && doses.allows(tank, day)) {
        return Optional.of(day);
      }
    }
    return Optional.empty();
  }

  private LocalDate lastLegal(List<Dose> tank, LocalDate first) {
    LocalDate last = first;
    while (last.isBefore(first.plusDays(LOOK_AHEAD_DAYS))
        && last.isBefore(end)
        && doses.allows(tank, last.plusDays(1))) {
      last = last.plusDays(1);
    }
    return last;
  }

  private RefusedRespray why(Ingredient active, Dose dose) {
    if (sensible.isAfter(end)) {
      return RefusedRespray.seasonOver(active);
    }
    List<Finding> blocks = doses.blocks(dose, sensible);
    return blocks.isEmpty()
        ? RefusedRespray.noRate(active)
        : RefusedRespray.of(active, blocks.get(0));
  }

  private void option(Dose dose, boolean sameSite, LocalDate first) {
    Ingredient active = dose.actives().get(0).ingredient();
    ResprayOption o = option(List.of(dose), sameSite, first, PublishedResprays.of(failed, active));
    if (o.controlPct() < HALF_EFFECTIVE_PCT) {
      refused.add(RefusedRespray.tooLittle(active, o.controlPct()));
    } else {
      options.add(isEffective(o) ? effective(o, List.of(active.site())) : o);
    }
  }

  private ResprayOption option(
      List<Dose> tank, boolean sameSite, LocalDate first, Optional<String> published) {
    SeasonOutcome again = scene.with(tank, first);
    Money cost = book.passCost().plus(book.resprayExtra());
    for (Dose d : tank) {
      cost = cost.plus(book.prices().perAcre(d).orElseThrow());
    }
    return new ResprayOption(
        tank,
        sameSite,
        List.of(),
        first,
        lastLegal(tank, first),
        heights.tallestCm(again, first),
        heights.tooTall(tank, again, first),
        controlPct(again, clean.with(tank, first)),
        cost,
        scene.asItIs().loss().minus(again.loss()),
        published);
  }

  private boolean isEffective(ResprayOption o) {
    return o.controlPct() >= 100 * book.house().effectiveSite();
  }

  private static ResprayOption effective(ResprayOption o, List<Site> sites) {
    return new ResprayOption(
        o.doses(),
        o.failedSite(),
        sites,
        o.earliest(),
        o.latest(),
        o.heightCm(),
        o.tooTall(),
        o.controlPct(),
        o.costPerAcre(),
        o.savesPerAcre(),
        o.published());
  }

  /**
   * Two products of different sites that have not failed, of each site the one that kills most: the
   * tank is legal as a whole on one day, and either both are effective alone or the two reach
   * together what one alone should.
   */
  private void tanks() {
    Map<Site, ResprayOption> best = new TreeMap<>();
    for (ResprayOption o : options) {
      if (!o.failedSite()) {
        best.merge(o.sites().get(0), o, (x, y) -> y.controlPct() > x.controlPct() ? y : x);
      }
    }
    List<ResprayOption> singles = List.copyOf(best.values());
    List<ResprayOption> found = new ArrayList<>();
    for (int i = 0; i < singles.size(); i++) {
      for (int j = i + 1; j < singles.size(); j++) {
        tank(singles.get(i), singles.get(j)).ifPresent(found::add);
      }
    }
    found.sort(
        Comparator.comparingInt((ResprayOption o) -> -o.effective().size())
            .thenComparingLong(o -> -Math.round(o.controlPct()))
            .thenComparing(ResprayOption::costPerAcre)
            .thenComparing(ResprayOption::key));
    found.stream().filter(this::passesAsTank).limit(MOST_TANKS).forEach(options::add);
  }

  private Optional<ResprayOption> tank(ResprayOption a, ResprayOption b) {
    List<Dose> both = List.of(a.doses().get(0), b.doses().get(0));
    Optional<LocalDate> first = firstLegal(both);
    if (first.isEmpty()) {
      return Optional.empty();
    }
    List<Site> sites = new ArrayList<>(a.effective());
    sites.addAll(b.effective());
    ResprayOption o = option(both, false, first.get(), Optional.empty());
    return sites.size() == 2 || isEffective(o)
        ? Optional.of(effective(o, sites))
        : Optional.empty();
  }

  /** Every rule on the whole tank, its adjuvants and volume among it. */
  private boolean passesAsTank(ResprayOption o) {
    SprayJob job =
        SprayJob.of(scene.field().id(), o.earliest(), doses.filled(o.doses(), o.earliest()));
    return MixJudge.of(book, scene.field(), job, today, Optional.empty())
        .judge(job)
        .judgement()
        .findings()
        .stream()
        .noneMatch(f -> f.severity() == Severity.BLOCK);
  }

  /**
   * Percent of the counted plants that a pass takes: what they add to the plants at harvest with it
   * and without it. Seedlings that came up since stand in both fields alike and fall out.
   */
  private double controlPct(SeasonOutcome again, SeasonOutcome cleanAgain) {
    double left = 0;
    double before = 0;
    for (WeedId w : survivors) {
      left += atHarvest(again, w) - atHarvest(cleanAgain, w);
      before += atHarvest(scene.asItIs(), w) - atHarvest(clean.asItIs(), w);
    }
    return before > 0 ? Math.max(0, 100 * (1 - left / before)) : 0;
  }

  private static double atHarvest(SeasonOutcome outcome, WeedId weed) {
    return outcome.weed(weed).allSurvivorsPerAcre();
  }
}
