package org.swathbook.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Method;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.WeedId;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Money;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Finding;
import org.swathbook.rules.HouseTests;
import org.swathbook.rules.LabelUses;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassPositions;
import org.swathbook.rules.PracticalRange;
import org.swathbook.rules.Rated;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.TankOffers;
import org.swathbook.rules.stewardship.DependsOnOneSiteRule;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;

/**
 * The cheapest product that, added to one pass at the highest rate of its label, frees a season
 * from leaning on one site: walked and judged again by every rule, and no more blocked than before.
 */
public final class AddedSite {
  private final Book book;
  private final Kernel kernel;
  private final Program program;
  private final SeasonOutcome season;
  private final Judgement judged;
  private final LocalDate today;

  private AddedSite(
      Book book,
      Kernel kernel,
      Program program,
      SeasonOutcome season,
      Judgement judged,
      LocalDate today) {
    this.book = book;
    this.kernel = kernel;
    this.program = program;
    this.season = season;
    this.judged = judged;
    this.today = today;
  }

  /** One product more in one pass. */
  private record Addition(PassOutcome pass, Dose dose, Program with, Optional<Money> cost) {}

  /**
   * The judgement of a program with such a remedy where it warns that a season depends on one site.
   *
   * @param program that was walked to the season
   */
  public static Judgement named(
      Book book,
      Kernel kernel,
      Program program,
      SeasonOutcome season,
      Judgement judged,
      LocalDate today) {
    if (judged.findings().stream().noneMatch(AddedSite::isMeant)) {
      return judged;
    }
    AddedSite search = new AddedSite(book, kernel, program, season, judged, today);
    List<Finding> findings =
        judged.findings().stream().map(f -> isMeant(f) ? search.answered(f) : f).toList();
    return new Judgement(
        judged.verdict(), findings, judged.asks(), judged.brokenHouseRules(), judged.tanks());
  }

  private static boolean isMeant(Finding f) {
    return f.rule().equals(DependsOnOneSiteRule.CARD.id()) && f.severity() == Severity.WARN;
  }

  private Finding answered(Finding f) {
    return new Finding(
        f.rule(),
        f.severity(),
        f.message(),
        f.limit(),
        f.actual(),
        f.source(),
        remedy(f.about().weed().orElseThrow()),
        f.about());
  }

  private String remedy(WeedId id) {
    WeedOutcome weed = season.weed(id);
    double most = weed.controlPctWithoutWeakest();
    Optional<Addition> nearest = Optional.empty();
    for (Addition a : additions(weed)) {
      SeasonOutcome then = SeasonWalk.walk(book, kernel, a.with());
      double without = then.weed(id).controlPctWithoutWeakest();
      if (Quantity.exceeds(without, most) && !isMoreBlocked(then)) {
        if (!HouseTests.isLostWithOneSite(book.house(), without)) {
          return "add " + words(a, without) + ", judged again by every rule";
        }
        most = without;
        nearest = Optional.of(a);
      }
    }
    double reached = most;
    return "no single product added to one pass is enough"
        + nearest.map(a -> "; nearest comes " + words(a, reached)).orElse("")
        + "; plan looks for whole programs";
  }

  private boolean isMoreBlocked(SeasonOutcome then) {
    return blocks(ProgramJudge.judge(book, kernel.traces(), then, today)) > blocks(judged);
  }

  private static boolean isRestricted(Addition a) {
    return a.dose().actives().stream()
        .anyMatch(d -> d.ingredient().terms().restrictedUse().find().orElse(false));
  }

  private static String words(Addition a, double withoutWeakestPct) {
    return Say.productRate(a.dose().rate())
        + " of "
        + a.dose().product().name()
        + (isRestricted(a) ? " (restricted use, for certified applicators)" : "")
        + " in pass "
        + (a.pass().index() + 1)
        + a.cost().map(c -> ", $" + c + " an acre").orElse(", of which no price is known")
        + ", with "
        + Say.pct(withoutWeakestPct)
        + " left when any one site is gone";
  }

  private static long blocks(Judgement judgement) {
    return judgement.findings().stream().filter(f -> f.severity() == Severity.BLOCK).count();
  }

  /** The cheapest first, what has no price last. */
  private List<Addition> additions(WeedOutcome weed) {
    List<Addition> out = new ArrayList<>();
    for (PassOutcome pass : season.passes()) {
      if (!pass.made()) {
        of(pass, weed, out);
      }
    }
    out.sort(
        Comparator.comparingLong((Addition a) -> a.cost().map(Money::cents).orElse(Long.MAX_VALUE))
            .thenComparing(a -> a.dose().product().id())
            .thenComparingInt(a -> a.pass().index()));
    return out;
  }

  private void of(PassOutcome pass, WeedOutcome weed, List<Addition> out) {
    TraceSet traces = kernel.traces();
    Set<Position> positions = PassPositions.of(traces, pass.timing());
    PassFacts facts =
        new PassFacts(
            book,
            traces,
            season.walkedPasses(),
            pass,
            positions,
            List.of(),
            Optional.empty(),
            new TankOffers(book, traces));
    int place = placeOf(pass);
    if (place < 0) {
      return;
    }
    Catalog catalog = book.catalog();
    for (Product p : catalog.products()) {
      Ingredient active = catalog.ingredient(p.contents().get(0).ingredient());
      boolean there =
          pass.mix().actives().stream().anyMatch(a -> a.ingredient().id().equals(active.id()));
      if (p.isSingle() && !there && mayHelp(facts, weed, active)) {
        highest(p, active, positions)
            .filter(d -> !UseJudge.blocks(book, traces, pass.timing(), d))
            .ifPresent(
                d -> {
                  Pass with = new Pass(program.passes().get(place).at(), with(pass, d));
                  Program changed = program.replacing(place, with);
                  out.add(new Addition(pass, d, changed, book.prices().perAcre(d)));
                });
      }
    }
  }

  /** Works on the weed by another site than the one that the season leans on. */
  private static boolean mayHelp(PassFacts facts, WeedOutcome weed, Ingredient active) {
    Optional<Site> weakest = weed.weakestSite();
    return !weakest.equals(Optional.of(active.site()))
        && Rated.works(facts, weed.pressure(), active);
  }

  private Optional<Dose> highest(Product product, Ingredient active, Set<Position> positions) {
    Field field = kernel.traces().field();
    return LabelUses.fitting(active, field, positions, product.formulation(), Method.BROADCAST)
        .stream()
        .flatMap(use -> PracticalRange.of(product, use, field).stream())
        .map(PracticalRange::high)
        .max(Comparator.comparingDouble(Rate::amount))
        .map(rate -> Doses.ofProduct(book.catalog(), product, rate));
  }

  /** With the adjuvants that all labels of the pass then ask for together. */
  private Mix with(PassOutcome pass, Dose more) {
    Mix mix = pass.mix().plus(more);
    List<ActiveUse> actives =
        UseJudge.facts(book, kernel.traces(), pass.index(), pass.timing(), mix).stream()
            .map(f -> new ActiveUse(f.dose(), f.active(), UseJudge.choose(f)))
            .toList();
    return FittedAdjuvants.of(mix, actives);
  }

  /** Where a pass stands in the program as it is written; below zero when that cannot be told. */
  private int placeOf(PassOutcome pass) {
    List<Integer> same = new ArrayList<>();
    for (int i = 0; i < program.passes().size(); i++) {
      if (program.passes().get(i).mix().equals(pass.mix())) {
        same.add(i);
      }
    }
    return same.size() == 1 ? same.get(0) : same.contains(pass.index()) ? pass.index() : -1;
  }
}
