package org.swathbook.audit;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import org.swathbook.audit.FieldChange.Outcome;
import org.swathbook.audit.FieldChange.WeedEffect;
import org.swathbook.audit.JournalJudge.Made;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.PastSeason;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Weed;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.measure.Money;
import org.swathbook.measure.Numbers;
import org.swathbook.program.Mix;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Rated;
import org.swathbook.rules.Say;
import org.swathbook.season.PassOutcome;
import org.swathbook.season.PassWeed;
import org.swathbook.season.SeasonOutcome;

/**
 * What one change would have done on every field in the last season of its journal, walked in the
 * weather of that season and judged by the rules of a plan. A change that a label forbids is told
 * and not counted.
 */
public final class WhatIfAudit {
  /** Less than so many points is no difference: default, ours. */
  private static final double A_DIFFERENCE = 1;

  /** A residual of its own where no post pass was made, days after planting: default, ours. */
  private static final int LAYER_AFTER_DAYS = 28;

  /** As many refusals of products as help; the rest is a count. */
  private static final int REFUSALS_SHOWN = 2;

  private final SeasonTrial trial;
  private final SprayedSeason season;
  private final List<String> remarks;
  private final List<String> changes = new ArrayList<>();
  private final Set<String> refused = new LinkedHashSet<>();
  private final Set<String> notKnown = new LinkedHashSet<>();
  private List<Made> passes;
  private Money cost = Money.ZERO;

  private WhatIfAudit(SprayedSeason season, List<String> remarks) {
    this.trial = new SeasonTrial(season);
    this.season = season;
    this.remarks = remarks;
    this.passes = season.passes();
  }

  public static WhatIfResult of(Book book, List<Field> fields, WhatIf change) {
    return new WhatIfResult(change, fields.stream().map(f -> of(book, f, change)).toList());
  }

  private static FieldChange of(Book book, Field field, WhatIf change) {
    Optional<PastSeason> last =
        book.pastSeasons().stream()
            .filter(p -> p.field().equals(field.id()) && p.season() < book.season())
            .filter(
                p -> book.journal().of(field.id()).stream().anyMatch(a -> a.season() == p.season()))
            .max(Comparator.comparing(PastSeason::season));
    if (last.isEmpty()) {
      return notTried(field, 0, "no season that both seasons.csv and applications.csv have");
    }
    SprayedSeason.Found found = SeasonAudit.sprayed(book, field, last.get());
    if (found.season().isEmpty()) {
      return notTried(field, last.get().season(), String.join(" ", found.remarks()));
    }
    WhatIfAudit audit = new WhatIfAudit(found.season().get(), found.remarks());
    if (audit.season.drivers().isEmpty()) {
      return audit.ended(Outcome.NOT_TRIED, "no driver weed");
    }
    if (change instanceof WhatIf.OverlappingResidual r) {
      return audit.residual(r.weed());
    }
    return change instanceof WhatIf.PostsBy p ? audit.postsBy(p.stage()) : audit.secondSite();
  }

  private static FieldChange notTried(Field field, int season, String why) {
    return new FieldChange(
        field,
        season,
        Outcome.NOT_TRIED,
        List.of(),
        List.of(why),
        Optional.empty(),
        List.of(),
        List.of());
  }

  private FieldChange secondSite() {
    boolean post = false;
    boolean wanting = false;
    for (int p = 0; p < passes.size(); p++) {
      Optional<PassOutcome> pass = season.passOf(season.walk(passes), passes, p);
      if (pass.isEmpty() || !trial.isPost(passes.get(p))) {
        continue;
      }
      post = true;
      List<WeedPressure> needing =
          season.drivers().stream()
              .filter(w -> SeasonTrial.weed(pass.get(), w).stands())
              .filter(w -> SeasonTrial.weed(pass.get(), w).effectiveFoliarSites() < 2)
              .toList();
      if (!needing.isEmpty()) {
        wanting = true;
        add(
            p,
            passes,
            needing,
            false,
            o ->
                needing.stream()
                    .mapToInt(w -> Math.min(2, SeasonTrial.weed(o, w).effectiveFoliarSites()))
                    .sum());
      }
    }
    if (!wanting) {
      return post
          ? ended(
              Outcome.NOT_NEEDED,
              "every post pass in which a driver weed stood has two effective foliar sites")
          : ended(Outcome.NOT_TRIED, "no post pass in the journal");
    }
    return finished("no product with a price is one more effective foliar site: " + tall());
  }

  /** How tall the driver weeds stood, which mostly tells why nothing works on them. */
  private String tall() {
    List<String> out = new ArrayList<>();
    for (int p = 0; p < passes.size(); p++) {
      Optional<PassOutcome> pass = season.passOf(trial.before(), passes, p);
      if (pass.isPresent() && trial.isPost(passes.get(p))) {
        for (WeedPressure w : season.drivers()) {
          PassWeed at = SeasonTrial.weed(pass.get(), w);
          if (at.stands() && at.effectiveFoliarSites() < 2) {
            out.add(
                w.weed().name()
                    + " up to "
                    + Say.inches(at.p90Cm())
                    + " on "
                    + Say.date(passes.get(p).date()));
          }
        }
      }
    }
    return Say.list(out);
  }

  private FieldChange residual(Weed weed) {
    Optional<WeedPressure> driver =
        season.drivers().stream().filter(w -> w.weed().id().equals(weed.id())).findFirst();
    if (driver.isEmpty()) {
      return ended(Outcome.NOT_TRIED, weed.name() + " is no driver weed of that season");
    }
    OptionalInt post = trial.firstPost();
    if (post.isPresent()) {
      int at = post.getAsInt();
      PassOutcome pass = season.passOf(trial.before(), passes, at).orElseThrow();
      if (SeasonTrial.weed(pass, driver.get()).effectiveSoilSites() > 0) {
        return ended(
            Outcome.NOT_NEEDED,
            "the pass of " + Say.date(passes.get(at).date()) + " brings an effective residual");
      }
      layer(at, passes, driver.get());
    }
    if (changes.isEmpty()) {
      Optional<Integer> day = ownDay();
      if (day.isPresent()) {
        SeasonTrace trace = season.traces().years().get(0);
        Made own = new Made("new pass", trace.bookDateOf(day.get()), Mix.of(List.of()));
        List<Made> more = new ArrayList<>(passes);
        more.add(own);
        more.sort(Comparator.comparing(Made::date));
        layer(more.indexOf(own), List.copyOf(more), driver.get());
      }
    }
    return finished(
        "no product with a price is an effective residual on it, in the first post pass or in a"
            + " pass of its own "
            + LAYER_AFTER_DAYS
            + " days after planting");
  }

  private void layer(int at, List<Made> on, WeedPressure weed) {
    add(
        at,
        on,
        List.of(weed),
        true,
        o -> Math.min(1, SeasonTrial.weed(o, weed).effectiveSoilSites()));
    if (!changes.isEmpty()) {
      season.walk(passes).weed(weed.weed().id()).overlaps().stream()
          // Passes that are not walked lie after harvest, so places agree.
          .filter(o -> o.nextPass() == at)
          .findFirst()
          .ifPresent(o -> changes.add(overlap(o.medianDays())));
    }
  }

  private static String overlap(double days) {
    String n = Numbers.decimals(Math.abs(days), 0);
    return days >= 0
        ? "it overlaps the layer before by " + n + " days"
        : "the layer before ended " + n + " days earlier: no overlap";
  }

  private Optional<Integer> ownDay() {
    SeasonTrace trace = season.traces().years().get(0);
    int day = trace.firstSprayDay(trace.plantingDay() + LAYER_AFTER_DAYS);
    return day <= trace.harvestDay() && day < trace.days() ? Optional.of(day) : Optional.empty();
  }

  private FieldChange postsBy(String stage) {
    OptionalInt post = trial.firstPost();
    if (post.isEmpty()) {
      return ended(Outcome.NOT_TRIED, "no post pass in the journal");
    }
    SeasonTrace trace = season.traces().years().get(0);
    OptionalInt place = stage(trace.crop(), stage);
    if (place.isEmpty()) {
      return ended(Outcome.NOT_TRIED, trace.crop().name() + " has no stage " + stage);
    }
    Made first = passes.get(post.getAsInt());
    int was = trace.dayOf(first.date());
    if (trace.stageIndex(was) <= place.getAsInt()) {
      return ended(
          Outcome.NOT_NEEDED,
          "the first post pass met " + trace.stageName(was) + " on " + Say.date(first.date()));
    }
    int day = trace.dayOfStage(place.getAsInt() + 1) - 1;
    while (day >= trace.emergenceDay() && !trace.sprayable(day)) {
      day--;
    }
    if (day < trace.emergenceDay()) {
      return ended(
          Outcome.NOT_TRIED,
          "no day fit for spraying between emergence and the end of "
              + trace.crop().stages().get(place.getAsInt()).name());
    }
    long earlier = ChronoUnit.DAYS.between(trace.bookDateOf(day), first.date());
    List<Made> moved = new ArrayList<>();
    for (int p = 0; p < passes.size(); p++) {
      Made m = passes.get(p);
      boolean moves =
          p >= post.getAsInt()
              && trial.isPost(m)
              && season.passOf(trial.before(), passes, p).isPresent();
      moved.add(moves ? new Made(m.id(), m.date().minusDays(earlier), m.mix()) : m);
    }
    moved.sort(Comparator.comparing(Made::date));
    SeasonOutcome after = season.walk(moved);
    SeasonTrial.Verdict verdict = trial.judged(moved, after, Set.of());
    changes.add(
        "the first post pass on "
            + Say.date(trace.bookDateOf(day))
            + " at "
            + trace.stageName(day)
            + ", "
            + Say.days(earlier)
            + " earlier than at "
            + trace.stageName(was));
    if (!verdict.refusals().isEmpty()) {
      return ended(Outcome.FORBIDDEN, said(verdict.refusals()));
    }
    passes = List.copyOf(moved);
    return finished("");
  }

  /** Leaf stages count collars in both ways of writing them: V3 of corn is 3-leaf of sorghum. */
  static OptionalInt stage(Crop crop, String typed) {
    OptionalInt own = crop.findStage(typed);
    return own.isEmpty() && typed.matches("[Vv][0-9]+")
        ? crop.findStage(typed.substring(1) + "-leaf")
        : own;
  }

  /**
   * Adds to a pass the product that brings most of what is counted, of equal ones the cheapest, if
   * any brings more than the pass has.
   */
  private void add(
      int at,
      List<Made> to,
      List<WeedPressure> weeds,
      boolean throughSoil,
      ToIntFunction<PassOutcome> counted) {
    boolean own = to.get(at).mix().doses().isEmpty();
    int most = own ? 0 : counted.applyAsInt(season.passOf(season.walk(to), to, at).orElseThrow());
    Optional<PricedDoses> best = Optional.empty();
    List<String> open = List.of();
    Set<IngredientId> inTank =
        to.get(at).mix().actives().stream()
            .map(a -> a.ingredient().id())
            .collect(Collectors.toSet());
    for (PricedDoses d : PricedDoses.of(season.past(), season.field())) {
      boolean mayWork = throughSoil ? d.active().hasSoilActivity() : d.active().hasFoliarActivity();
      if (!mayWork
          || inTank.contains(d.active().id())
          || weeds.stream().allMatch(w -> Rated.isResisted(w, d.active()))) {
        continue;
      }
      List<Made> more = SeasonTrial.with(to, at, d.dose());
      SeasonOutcome after = season.walk(more);
      int brings = counted.applyAsInt(season.passOf(after, more, at).orElseThrow());
      if (brings > most) {
        SeasonTrial.Verdict verdict = trial.judged(more, after, Set.of(d.active().id()));
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
      passes = SeasonTrial.with(to, at, best.get().dose());
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

  private static String said(List<Finding> refusals) {
    return refusals.get(0).message();
  }

  private FieldChange finished(String nothingWorks) {
    if (passes.equals(season.passes())) {
      return refused.isEmpty()
          ? ended(Outcome.NO_BETTER, nothingWorks)
          : ended(Outcome.FORBIDDEN, refusedWords());
    }
    List<WeedEffect> effects = trial.effects(season.walk(passes));
    boolean better = effects.stream().anyMatch(WhatIfAudit::isBetter);
    boolean worse = effects.stream().anyMatch(WhatIfAudit::isWorse);
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

  static boolean isBetter(WeedEffect e) {
    return e.before().fewerThanTwoPct() - e.after().fewerThanTwoPct() >= A_DIFFERENCE
        || e.after().controlPct() - e.before().controlPct() >= A_DIFFERENCE
        || e.after().withoutPct() - e.before().withoutPct() >= A_DIFFERENCE;
  }

  static boolean isWorse(WeedEffect e) {
    return e.before().controlPct() - e.after().controlPct() >= A_DIFFERENCE;
  }

  private FieldChange ended(Outcome outcome, String why) {
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
