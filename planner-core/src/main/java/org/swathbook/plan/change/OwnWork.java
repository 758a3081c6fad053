package org.swathbook.plan.change;

import java.time.LocalDate;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Response;
import org.swathbook.measure.Quantity;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Dose;
import org.swathbook.rules.Rated;
import org.swathbook.rules.Say;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.SiteControl;

/**
 * What a product itself does through leaves, in one pass, to the driver weed that stands there and
 * that it does most to.
 *
 * @param product in words
 * @param weed the pressure of that weed
 * @param heightCm that the house's share of its plants do not exceed when the sprayer comes
 * @param pct of the plants, percent, at that height
 */
public record OwnWork(String product, WeedPressure weed, double heightCm, double pct) {
  /** Half-effective begins here, percent: what does less is not there for the weed. */
  private static final double HALF_PCT = 50;

  /**
   * Of a dose that its pass counts on: the response table rates an active of it as effective on the
   * weed through leaves, and the weed does not resist it. Empty for what works through the soil
   * alone, and where no such weed stands or the program has no such pass.
   *
   * @param planned date of the pass as it is planned
   */
  public static Optional<OwnWork> countedOn(
      Book book, SeasonOutcome season, LocalDate planned, Dose dose) {
    return most(book, season, planned, dose, 100 * book.house().effectiveSite());
  }

  private static Optional<OwnWork> most(
      Book book, SeasonOutcome season, LocalDate planned, Dose dose, double leastRatedPct) {
    OwnWork out = null;
    for (PassOutcome pass : season.passes()) {
      if (!pass.planned().equals(planned) || !pass.mix().doses().contains(dose)) {
        continue;
      }
      for (PassWeed w : pass.weeds()) {
        WeedPressure weed = season.weed(w.weed()).pressure();
        if (!w.standsInAnyYear() || !weed.driver().isDriver()) {
          continue;
        }
        for (ActiveDose a : dose.actives()) {
          double pct = pct(w, a.ingredient());
          if (isRated(book, weed, a.ingredient(), leastRatedPct)
              && (out == null || pct > out.pct)) {
            out = new OwnWork(dose.product().name(), weed, w.p90Cm(), pct);
          }
        }
      }
    }
    return Optional.ofNullable(out);
  }

  private static boolean isRated(Book book, WeedPressure weed, Ingredient active, double leastPct) {
    return active.hasFoliarActivity()
        && !Rated.isResisted(weed, active)
        && book.catalog()
            .response(weed.weed().id(), active.id(), Response.Timing.POST)
            .find()
            .filter(r -> r.emaxPct() >= leastPct)
            .isPresent();
  }

  /** Nothing where another active of its site does more: that one does it. */
  private static double pct(PassWeed weed, Ingredient active) {
    return weed.foliar().stream()
        .filter(s -> s.best().equals(active.id()) && !s.struck())
        .mapToDouble(SiteControl::controlPct)
        .max()
        .orElse(0);
  }

  /** Whether it does less than half at that height. */
  public boolean fails() {
    return Quantity.exceeds(HALF_PCT, pct);
  }

  /** That it fails, and why, in one sentence. */
  public String words() {
    return product
        + " itself would give "
        + Say.pct(Math.rint(pct))
        + " of "
        + weed.weed().name()
        + " at "
        + Say.inches(heightCm)
        + ", the height then standing: what helps is an earlier pass.";
  }

  /**
   * Whether a product does of the work of the one in whose place it comes: half of a driver weed
   * that stands, or as much as that one where it does less. True of what works through the soil
   * alone, and of the same actives from another product.
   *
   * @param now the program with the product that goes
   * @param then the program with the change
   */
  public static boolean isDone(
      Book book, SeasonOutcome now, SeasonOutcome then, SingleChange change) {
    if (change.kind() != SingleChange.Kind.EXCHANGE_PRODUCT) {
      return true;
    }
    Dose in = change.in().get(0);
    Dose out = change.out().orElseThrow();
    Optional<OwnWork> gone = countedOn(book, now, change.pass(), out);
    if (gone.isEmpty() || Substitutes.actives(in).equals(Substitutes.actives(out))) {
      return true;
    }
    double asked = Math.min(HALF_PCT, gone.get().pct);
    return most(book, then, change.pass(), in, 0)
        .filter(w -> !Quantity.exceeds(asked, w.pct))
        .isPresent();
  }
}
