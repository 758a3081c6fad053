package org.swathbook.audit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.swathbook.audit.JournalJudge.Made;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Position;
import org.swathbook.growth.Timings;
import org.swathbook.program.Dose;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassPositions;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Severity;
import org.swathbook.rules.TankOffers;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SeasonSums;
import org.swathbook.season.outcome.WalkedPasses;
import org.swathbook.season.outcome.WeedOutcome;

/**
 * A season as it was sprayed, against which changes are held. It is walked and judged when that is
 * first asked for: of many seasons nothing is to be changed. Belongs to one thread.
 */
final class SeasonTrial {
  private final SprayedSeason season;
  private final TankOffers offers;
  private @Nullable SeasonSums before;
  private @Nullable WalkedPasses walked;
  private @Nullable List<PricedDoses> priced;
  private @Nullable Set<Objection> objections;

  /** A block, whatever its numbers: an old mistake in a pass is no reason against a change. */
  private record Objection(String pass, RuleId rule, Optional<IngredientId> active) {}

  SeasonTrial(SprayedSeason season) {
    this.season = season;
    this.offers = new TankOffers(season.past(), season.traces());
  }

  SeasonSums before() {
    if (before == null) {
      before = season.walk(season.passes());
    }
    return before;
  }

  private Set<Objection> objections() {
    if (objections == null) {
      Set<Objection> found = new HashSet<>();
      blocks(judge(season.passes(), walked()))
          .forEach(f -> found.add(objection(season.passes(), f)));
      objections = found;
    }
    return objections;
  }

  /** Where nobody has asked what the season came to, nothing but its passes is walked. */
  WalkedPasses walked() {
    if (walked == null) {
      walked = before == null ? season.stand(season.passes()) : before.walkedPasses();
    }
    return walked;
  }

  /** Doses with a price that a tank may get more; the same for every pass and change. */
  List<PricedDoses> priced() {
    if (priced == null) {
      priced = PricedDoses.of(season.past(), season.field());
    }
    return priced;
  }

  private Findings judge(List<Made> passes, WalkedPasses walked) {
    return new JournalJudge(season.past(), season.traces(), walked, passes).judgeAsPlanned(offers);
  }

  private static List<Finding> blocks(Findings found) {
    return found.sorted().stream()
        .filter(f -> f.severity() == Severity.BLOCK && f.about().pass().isPresent())
        .toList();
  }

  private static Objection objection(List<Made> passes, Finding f) {
    return new Objection(
        passes.get(f.about().pass().orElseThrow()).id(), f.rule(), f.about().ingredient());
  }

  /**
   * What the labels refuse of changed passes.
   *
   * @param refusals blocks that the passes as made did not have, or that concern what is added
   * @param notKnown limits of what is added that the catalog does not state
   */
  record Verdict(List<Finding> refusals, List<String> notKnown) {}

  Verdict judged(List<Made> changed, Set<IngredientId> added) {
    Findings found = judge(changed, season.stand(changed));
    List<Finding> refusals =
        blocks(found).stream()
            .filter(
                f ->
                    f.about().ingredient().filter(added::contains).isPresent()
                        || !objections().contains(objection(changed, f)))
            .toList();
    List<String> asks =
        found.sortedAsks().stream()
            .filter(a -> a.about().ingredient().filter(added::contains).isPresent())
            .map(a -> a.what())
            .distinct()
            .toList();
    return new Verdict(refusals, asks);
  }

  /** Whether a pass was made over the crop that was up. */
  boolean isPost(Made pass) {
    return PassPositions.of(season.traces(), Timings.on(season.traces(), pass.date())).stream()
        .anyMatch(p -> p.phase() == Position.Phase.IN_CROP);
  }

  /** Place of the first post pass that is walked. */
  OptionalInt firstPost() {
    List<Made> made = season.passes();
    for (int p = 0; p < made.size(); p++) {
      if (isPost(made.get(p)) && season.isWalked(made.get(p).date())) {
        return OptionalInt.of(p);
      }
    }
    return OptionalInt.empty();
  }

  static List<Made> with(List<Made> passes, int at, Dose more) {
    Made old = passes.get(at);
    List<Made> out = new ArrayList<>(passes);
    out.set(at, new Made(old.id(), old.date(), old.mix().plus(more), old.written()));
    return List.copyOf(out);
  }

  static PassWeed weed(PassOutcome pass, WeedPressure weed) {
    return pass.weeds().stream()
        .filter(w -> w.weed().equals(weed.weed().id()))
        .findFirst()
        .orElseThrow();
  }

  /** Driver weeds before and after. */
  List<FieldChange.WeedEffect> effects(SeasonSums after) {
    return season.drivers().stream()
        .map(
            w ->
                new FieldChange.WeedEffect(
                    w, figures(before().weed(w.weed().id())), figures(after.weed(w.weed().id()))))
        .toList();
  }

  private static FieldChange.Figures figures(WeedOutcome w) {
    return new FieldChange.Figures(
        w.metNonePct() + w.metOnePct(), w.controlPct(), w.controlPctWithoutWeakest());
  }
}
