package org.swathbook.audit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.swathbook.audit.FieldChange.Outcome;
import org.swathbook.audit.FieldChange.WeedEffect;
import org.swathbook.audit.JournalJudge.Made;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.Money;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Rated;
import org.swathbook.rules.Say;
import org.swathbook.season.DayInSeason;
import org.swathbook.season.SitesMet;
import org.swathbook.season.outcome.SeasonSums;

/**
 * A past season of a field that is being changed: what is changed so far, what it costs, and what
 * labels refused of it.
 */
final class ChangedSeason {
  /** Less than so many points is no difference: default, ours. */
  private static final double A_DIFFERENCE = 1;

  /** As many refusals of products as help; the rest is a count. */
  private static final int REFUSALS_SHOWN = 2;

  private final SeasonTrial trial;
  private final SprayedSeason season;
  private final List<String> remarks;
  private final List<String> changes = new ArrayList<>();
  private final Set<String> refused = new LinkedHashSet<>();
  private final Set<String> notKnown = new LinkedHashSet<>();
  private List<Made> passes;

  /** What these come to, walked when first asked for. */
  private @Nullable SeasonSums walked;

  private Money cost = Money.ZERO;

  /**
   * @param trial of the season as it was sprayed, which several changes may share
   * @param remarks what is left out of the season
   */
  ChangedSeason(SprayedSeason season, SeasonTrial trial, List<String> remarks) {
    this.trial = trial;
    this.season = season;
    this.remarks = List.copyOf(remarks);
    this.passes = season.passes();
  }

  SprayedSeason season() {
    return season;
  }

  SeasonTrial trial() {
    return trial;
  }

  List<WeedPressure> drivers() {
    return season.drivers();
  }

  /** As they are by now, by date. */
  List<Made> passes() {
    return passes;
  }

  boolean isChanged() {
    return !changes.isEmpty();
  }

  SeasonSums walk() {
    if (walked == null) {
      walked = season.walk(passes);
    }
    return walked;
  }

  void say(String change) {
    changes.add(change);
  }

  /** Other passes in the place of those there are. */
  void become(List<Made> others) {
    passes = List.copyOf(others);
    walked = null;
  }

  /**
   * Adds to a pass the product that brings most of what is counted, of equal ones the cheapest, if
   * any brings more than the pass has. What stands there is walked once for all of them, the passes
   * of the season only with one that brings more, and what comes of them only with the one taken.
   */
  void add(
      int at,
      List<Made> to,
      List<WeedPressure> weeds,
      boolean throughSoil,
      ToIntFunction<Map<WeedId, SitesMet.OfPass>> counted) {
    boolean own = to.get(at).mix().doses().isEmpty();
    DayInSeason day = season.dayOf(to, at);
    List<WeedId> told = weeds.stream().map(w -> w.weed().id()).toList();
    int most = own ? 0 : counted.applyAsInt(day.sites(to.get(at).mix(), told));
    Optional<PricedDoses> best = Optional.empty();
    List<String> open = List.of();
    Set<IngredientId> inTank =
        to.get(at).mix().actives().stream()
            .map(a -> a.ingredient().id())
            .collect(Collectors.toSet());
    for (PricedDoses d : trial.priced()) {
      boolean mayWork = throughSoil ? d.active().hasSoilActivity() : d.active().hasFoliarActivity();
      if (!mayWork
          || inTank.contains(d.active().id())
          || weeds.stream().allMatch(w -> Rated.isResisted(w, d.active()))) {
        continue;
      }
      List<Made> more = SeasonTrial.with(to, at, d.dose());
      int brings = counted.applyAsInt(day.sites(more.get(at).mix(), told));
      if (brings > most) {
        SeasonTrial.Verdict verdict = trial.judged(more, Set.of(d.active().id()));
        if (verdict.refusals().isEmpty()) {
          most = brings;
          best = Optional.of(d);
          open = verdict.notKnown();
        } else {
          refused.add(said(verdict.refusals()));
        }
      }
    }
    if (best.isPresent()) {
      become(SeasonTrial.with(to, at, best.get().dose()));
      cost = cost.plus(best.get().cost()).plus(own ? season.past().passCost() : Money.ZERO);
      notKnown.addAll(open);
      changes.add(
          Say.productRate(best.get().dose().rate())
              + " of "
              + best.get().dose().product().name()
              + (own ? " in a pass of its own on " : " into the pass of ")
              + Say.date(to.get(at).date()));
    }
  }

  /** What a pass, as it is by now, does to each driver weed. */
  Map<WeedId, SitesMet.OfPass> sites(int at) {
    return season
        .dayOf(passes, at)
        .sites(passes.get(at).mix(), drivers().stream().map(w -> w.weed().id()).toList());
  }

  static SitesMet.OfPass of(Map<WeedId, SitesMet.OfPass> sites, WeedPressure weed) {
    return Objects.requireNonNull(sites.get(weed.weed().id()));
  }

  static String said(List<Finding> refusals) {
    return refusals.get(0).message();
  }

  /** What has come of it; with nothing changed, why. */
  FieldChange finished(String nothingWorks) {
    if (passes.equals(season.passes())) {
      return refused.isEmpty()
          ? ended(Outcome.NO_BETTER, nothingWorks)
          : ended(Outcome.FORBIDDEN, refusedWords());
    }
    List<WeedEffect> effects = trial.effects(walk());
    boolean better = effects.stream().anyMatch(ChangedSeason::isBetter);
    boolean worse = effects.stream().anyMatch(ChangedSeason::isWorse);
    List<String> why = new ArrayList<>(remarks);
    if (worse) {
      why.add(0, "some driver weed would have been controlled less");
    }
    return new FieldChange(
        season.field(),
        season.row().season(),
        better && !worse ? Outcome.IMPROVED : Outcome.NO_BETTER,
        changes,
        why,
        Optional.of(cost),
        effects,
        List.copyOf(notKnown));
  }

  private String refusedWords() {
    int rest = refused.size() - REFUSALS_SHOWN;
    return refused.stream().limit(REFUSALS_SHOWN).collect(Collectors.joining(" "))
        + (rest > 0 ? " And " + rest + " more that would work." : "");
  }

  private static boolean isBetter(WeedEffect e) {
    return e.before().fewerThanTwoPct() - e.after().fewerThanTwoPct() >= A_DIFFERENCE
        || e.after().controlPct() - e.before().controlPct() >= A_DIFFERENCE
        || e.after().withoutPct() - e.before().withoutPct() >= A_DIFFERENCE;
  }

  private static boolean isWorse(WeedEffect e) {
    return e.before().controlPct() - e.after().controlPct() >= A_DIFFERENCE;
  }

  FieldChange ended(Outcome outcome, String why) {
    List<String> all = new ArrayList<>();
    all.add(why);
    all.addAll(remarks);
    return new FieldChange(
        season.field(),
        season.row().season(),
        outcome,
        changes,
        all,
        Optional.empty(),
        List.of(),
        List.of());
  }
}
