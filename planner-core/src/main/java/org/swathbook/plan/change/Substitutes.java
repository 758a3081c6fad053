package org.swathbook.plan.change;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.swathbook.book.Book;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.ProductId;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Money;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.plan.choice.OptionMaker;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.program.Dose;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;

/**
 * What could go into a pass in the place of a product that cannot be had: single products at a rate
 * of the label, each put into that program, walked through all weather years and judged by every
 * rule. First the same active from another product, then what breaks fewest house rules that stood,
 * then what draws fewest warnings on itself, then the highest net return. What a rule blocks is no
 * substitute, nor what leaves the weeds that miss the product most nearly as they would be without
 * either, nor, in the place of what works on a driver weed through its leaves, what does not itself
 * do half, or as much as that where that does less.
 */
public final class Substitutes {
  /** As many are named: default, ours. */
  private static final int NAMED = 3;

  /** And no more than so many are walked in search of them: default, ours. */
  private static final int WALKED = 12;

  /**
   * Of the control that goes with the product, on the weeds that lose most, a substitute gives back
   * this share at least: default, ours.
   */
  private static final double LEAST_GIVEN_BACK = 0.5;

  /** Percent points of control below which nothing is lost without the product: default, ours. */
  private static final double NOTHING_LOST = 0.1;

  private final Book book;
  private final Kernel kernel;
  private final SeasonOutcome now;
  private final LocalDate today;
  private final StandingPasses passes;
  private final List<DoseOption> options;

  private record Scored(SingleChange change, boolean sameActive, double score) {}

  /**
   * @param now the program as it stands, walked
   */
  public Substitutes(Book book, TraceSet traces, SeasonOutcome now, LocalDate today) {
    this.book = book;
    this.kernel = Kernel.of(book, traces);
    this.now = now;
    this.today = today;
    this.passes = new StandingPasses(book, kernel);
    this.options = OptionMaker.make(book, traces.field()).options();
  }

  /**
   * For one product of one pass; empty when nothing legal does its work there.
   *
   * @param planned date of the pass as it is planned
   */
  public List<JudgedChange> of(LocalDate planned, ProductId product) {
    ChangeTerms terms =
        new ChangeTerms(
            planned,
            PlanWishes.NONE.withoutAll(List.of(product)),
            EnumSet.of(SingleChange.Kind.EXCHANGE_PRODUCT),
            0,
            Money.ZERO);
    ChangeMaker maker =
        ChangeMaker.of(book, kernel.traces(), now.program(), passes, terms, options, today);
    WalkedChange.Standing standing = WalkedChange.Standing.of(book, kernel, now, terms, today);
    SeasonOutcome without = SeasonWalk.walk(book, kernel, without(planned, product));
    List<JudgedChange> out = new ArrayList<>();
    Set<ProductId> tried = new HashSet<>();
    for (SingleChange c : inOrder(maker, planned, product)) {
      if (tried.size() == WALKED) {
        break;
      }
      if (tried.add(c.in().get(0).product().id())) {
        WalkedChange walked = new WalkedChange(standing, maker.filled(c));
        if (walked.isLegal()) {
          JudgedChange told = walked.told();
          if (doesTheWork(told.outcome(), without)
              && OwnWork.isDone(book, now, told.outcome(), told.change())) {
            out.add(told);
          }
        }
      }
    }
    // The sort is stable, so that equals keep the order of their scores.
    out.sort(
        Comparator.comparing((JudgedChange c) -> !isSameActive(c.change()))
            .thenComparing(c -> c.breaks().size())
            .thenComparing(c -> warnings(c).size())
            .thenComparing(c -> c.net().orElse(Money.ZERO), Comparator.reverseOrder()));
    return List.copyOf(out.subList(0, Math.min(NAMED, out.size())));
  }

  /**
   * What the product itself does at the height of the weeds that then stand, where that is less
   * than half: no substitute mends what an earlier pass would.
   */
  public Optional<OwnWork> failing(LocalDate planned, Dose dose) {
    return OwnWork.countedOn(book, now, planned, dose).filter(OwnWork::fails);
  }

  /** The program as it stands without the product in that pass; others keep it. */
  Program without(LocalDate planned, ProductId product) {
    Program program = now.program();
    Pass pass =
        passes.of(program).stream()
            .filter(s -> s.planned().equals(planned))
            .map(StandingPass::pass)
            .filter(p -> p.mix().holds(product))
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("no " + product + " on " + planned));
    Pass less = new Pass(pass.at(), pass.mix().without(product));
    return program.replacing(program.passes().indexOf(pass), less);
  }

  /** On every weed that loses at least half as much without the product as the one hit hardest. */
  private boolean doesTheWork(SeasonOutcome with, SeasonOutcome without) {
    double most = now.weeds().stream().mapToDouble(w -> lost(w, without)).max().orElse(0);
    return now.weeds().stream()
        .filter(w -> lost(w, without) >= most / 2)
        .allMatch(
            w ->
                lost(w, with) <= Math.max(NOTHING_LOST, (1 - LEAST_GIVEN_BACK) * lost(w, without)));
  }

  /** Percent points of a weed's control. */
  private static double lost(WeedOutcome now, SeasonOutcome then) {
    return now.controlPct() - then.weed(now.pressure().weed().id()).controlPct();
  }

  /** Warnings that name what a change puts in, or one of its actives. */
  public static List<Finding> warnings(JudgedChange change) {
    Dose in = change.change().in().get(0);
    return change.judgement().findings().stream()
        .filter(f -> f.severity() == Severity.WARN)
        .filter(
            f ->
                f.about().product().filter(in.product().id()::equals).isPresent()
                    || f.about().ingredient().filter(actives(in)::contains).isPresent())
        .toList();
  }

  private static boolean isSameActive(SingleChange c) {
    return actives(c.in().get(0)).equals(actives(c.out().orElseThrow()));
  }

  private List<SingleChange> inOrder(ChangeMaker maker, LocalDate planned, ProductId product) {
    return maker.ofPasses().stream()
        .filter(c -> c.kind() == SingleChange.Kind.EXCHANGE_PRODUCT && c.pass().equals(planned))
        .filter(c -> c.out().orElseThrow().product().id().equals(product))
        .filter(c -> passes.isLegalInOrder(c.program()))
        .map(c -> new Scored(c, isSameActive(c), passes.quick(c.program())))
        .sorted(
            Comparator.comparing((Scored s) -> !s.sameActive)
                .thenComparing(Comparator.comparingDouble(Scored::score).reversed()))
        .map(Scored::change)
        .toList();
  }

  static Set<IngredientId> actives(Dose dose) {
    return dose.actives().stream()
        .map(a -> a.ingredient().id())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }
}
