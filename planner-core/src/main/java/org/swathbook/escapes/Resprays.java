package org.swathbook.escapes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.swathbook.book.Book;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.Money;
import org.swathbook.plan.DayDoses;
import org.swathbook.program.Dose;
import org.swathbook.program.SeenWeed;
import org.swathbook.rules.Finding;
import org.swathbook.season.SeasonOutcome;

/** Looks for a product that may go on the survivors, among the planner's own legal doses. */
final class Resprays {
  /** Regrowth that has leaves enough to take up a spray, cm: 2 in, common practice, no source. */
  private static final double FRESH_CM = 2 * 2.54;

  /** Growth of survivors on a warm day, cm: 4 in over 12 days (default). */
  private static final double GROWTH_CM_A_DAY = 4 * 2.54 / 12;

  /** So long is a first legal day waited for: default, ours. */
  private static final int PATIENCE_DAYS = 14;

  private static final int LOOK_AHEAD_DAYS = 56;

  /** What controls less of the survivors is not offered: half-effective begins here elsewhere. */
  private static final double HALF_EFFECTIVE_PCT = 50;

  private final FieldAfterPass scene;
  private final FieldAfterPass clean;
  private final Book book;
  private final DayDoses doses;
  private final List<WeedReading> alive;
  private final Set<WeedId> survivors = new TreeSet<>();
  private final List<Site> failed;
  private final boolean plainCause;
  private final LocalDate sensible;
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
    // Sites that have not failed first; then what is expected to kill more, then what pays more.
    r.options.sort(
        Comparator.comparing(ResprayOption::failedSite)
            .thenComparingLong((ResprayOption o) -> -Math.round(o.controlPct()))
            .thenComparing(o -> o.costPerAcre().minus(o.savesPerAcre()))
            .thenComparing(o -> o.dose().product().id()));
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
      refused.add(
          new RefusedRespray(
              active,
              "site "
                  + active.site()
                  + " has just failed here and nothing in the spraying explains it"));
      return;
    }
    for (Dose dose : rates) {
      Optional<LocalDate> first = firstLegal(dose);
      if (first.isPresent()) {
        option(dose, again, first.get());
        return;
      }
    }
    refused.add(new RefusedRespray(active, why(rates.get(rates.size() - 1))));
  }

  private Optional<LocalDate> firstLegal(Dose dose) {
    for (int i = 0; i <= PATIENCE_DAYS; i++) {
      LocalDate day = sensible.plusDays(i);
      if (!day.isAfter(end) && doses.allows(dose, day)) {
        return Optional.of(day);
      }
    }
    return Optional.empty();
  }

  private String why(Dose dose) {
    if (sensible.isAfter(end)) {
      return "the season is over before it could go on";
    }
    List<Finding> blocks = doses.blocks(dose, sensible);
    return blocks.isEmpty() ? "no rate of it fits this field on that day" : blocks.get(0).message();
  }

  private void option(Dose dose, boolean sameSite, LocalDate first) {
    LocalDate last = first;
    while (last.isBefore(first.plusDays(LOOK_AHEAD_DAYS))
        && last.isBefore(end)
        && doses.allows(dose, last.plusDays(1))) {
      last = last.plusDays(1);
    }
    SeasonOutcome again = scene.with(dose, first);
    double controlPct = controlPct(again, clean.with(dose, first));
    Ingredient active = dose.actives().get(0).ingredient();
    if (controlPct < HALF_EFFECTIVE_PCT) {
      refused.add(
          new RefusedRespray(
              active,
              "it would control only about "
                  + (long) Math.floor(controlPct)
                  + " % of the survivors"));
      return;
    }
    Money cost =
        book.prices().perAcre(dose).orElseThrow().plus(book.passCost()).plus(book.resprayExtra());
    options.add(
        new ResprayOption(
            dose,
            sameSite,
            first,
            last,
            controlPct,
            cost,
            scene.asItIs().loss().minus(again.loss()),
            PublishedResprays.of(failed, active)));
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
