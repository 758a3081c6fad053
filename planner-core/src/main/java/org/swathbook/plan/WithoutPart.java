package org.swathbook.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.book.Book;
import org.swathbook.catalog.WeedId;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.measure.Money;
import org.swathbook.plan.draft.Broken;
import org.swathbook.program.Anchor;
import org.swathbook.program.Dose;
import org.swathbook.program.Pass;
import org.swathbook.rules.TankOffers;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;

/**
 * What goes wrong in a program without one of its passes, or one product of a pass: why it is
 * there.
 *
 * @param pass place of the pass in the program, from 0
 * @param dose the product that is left out; empty when it is the whole pass
 * @param net what that changes in the net return of an acre; empty without a price
 * @param worstHit the weed whose mean control falls most; empty when none falls by a tenth of a
 *     point
 * @param controlPct its control with, and {@code controlPctWithout} without it; NaN without one
 * @param breaks names of house rules that are then broken and were not
 */
public record WithoutPart(
    int pass,
    Optional<Dose> dose,
    Optional<Money> net,
    Optional<WeedId> worstHit,
    double controlPct,
    double controlPctWithout,
    List<String> breaks) {

  /** A smaller fall does not show in a figure with one decimal. */
  private static final double SAME_POINTS = 0.05;

  public WithoutPart {
    breaks = List.copyOf(breaks);
  }

  /** By pass, the whole of it first; nothing of a pass that is made. */
  static List<WithoutPart> of(Book book, Kernel kernel, SeasonOutcome whole) {
    TankOffers offers = new TankOffers(book, kernel.traces());
    Set<Broken> broken = Broken.of(HouseRuleCheck.broken(book, offers, whole));
    List<Pass> passes = whole.program().passes();
    List<WithoutPart> out = new ArrayList<>();
    for (int p = 0; p < whole.passes().size(); p++) {
      Pass pass = passes.get(whole.passes().get(p).index());
      if (pass.at() instanceof Anchor.Made) {
        continue;
      }
      List<Pass> rest = new ArrayList<>(passes);
      rest.remove(pass);
      out.add(part(book, kernel, offers, whole, broken, p, Optional.empty(), rest));
      for (Dose d : pass.mix().doses().size() > 1 ? pass.mix().doses() : List.<Dose>of()) {
        List<Pass> changed = new ArrayList<>(passes);
        changed.set(passes.indexOf(pass), new Pass(pass.at(), pass.mix().minus(d)));
        out.add(part(book, kernel, offers, whole, broken, p, Optional.of(d), changed));
      }
    }
    return out;
  }

  private static WithoutPart part(
      Book book,
      Kernel kernel,
      TankOffers offers,
      SeasonOutcome whole,
      Set<Broken> broken,
      int pass,
      Optional<Dose> dose,
      List<Pass> passes) {
    SeasonOutcome outcome = SeasonWalk.walk(book, kernel, whole.program().with(passes));
    Optional<WeedOutcome> hit = Optional.empty();
    double most = SAME_POINTS;
    for (WeedOutcome w : whole.weeds()) {
      double fall = w.controlPct() - outcome.weed(w.pressure().weed().id()).controlPct();
      if (fall > most) {
        most = fall;
        hit = Optional.of(w);
      }
    }
    Optional<WeedId> weed = hit.map(w -> w.pressure().weed().id());
    return new WithoutPart(
        pass,
        dose,
        outcome.net().flatMap(n -> whole.net().map(n::minus)),
        weed,
        hit.map(WeedOutcome::controlPct).orElse(Double.NaN),
        weed.map(w -> outcome.weed(w).controlPct()).orElse(Double.NaN),
        Broken.without(Broken.of(HouseRuleCheck.broken(book, offers, outcome)), broken));
  }
}
