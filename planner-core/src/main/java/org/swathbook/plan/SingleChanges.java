package org.swathbook.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Book;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.WeedId;
import org.swathbook.check.BrokenHouseRule;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.check.Judgement;
import org.swathbook.check.ProgramJudge;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Money;
import org.swathbook.program.Dose;
import org.swathbook.rules.Verdict;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonOutcome;
import org.swathbook.season.SeasonWalk;

/**
 * Single changes that help a program which stands: found with the planner's own doses, dates and
 * legality, scored quickly by the kernel, the best of each kind walked in full, and those that are
 * shown judged by the whole rule book.
 */
public final class SingleChanges {
  /** Of each kind, as many as this are walked in full: default, ours. */
  private static final int WALKED_OF_A_KIND = 4;

  /** And as many that bring a driver weed a site which the tank lacks: default, ours. */
  private static final int WALKED_FOR_A_SITE = 6;

  /** A gain below this many dollars an acre is no help: default, ours. */
  private static final Money WORTH_IT = Money.ofDollars(1);

  /** Control that differs by fewer points is the same to an adviser: default, ours. */
  private static final double SAME_CONTROL = 0.5;

  private final Book book;
  private final Kernel kernel;
  private final TraceSet traces;
  private final SeasonOutcome now;
  private final ChangeTerms terms;
  private final LocalDate today;
  private final Set<Broken> brokenNow;
  private final Strengths strengths;
  private final ChangeMaker maker;
  private final AddedTanks added;
  private final List<DoseOption> options;
  private final StandingPasses passes;

  private record Broken(String name, Optional<WeedId> weed) {
    static Set<Broken> of(List<BrokenHouseRule> all) {
      Set<Broken> out = new LinkedHashSet<>();
      all.forEach(b -> out.add(new Broken(b.name(), b.weed())));
      return out;
    }

    static List<String> without(Set<Broken> all, Set<Broken> gone) {
      return all.stream().filter(b -> !gone.contains(b)).map(Broken::name).distinct().toList();
    }
  }

  private record Scored(SingleChange change, double score) {}

  /**
   * @param now the program as it stands, walked by the same kernel
   */
  public SingleChanges(
      Book book, Kernel kernel, SeasonOutcome now, ChangeTerms terms, LocalDate today) {
    this.book = book;
    this.kernel = kernel;
    this.traces = kernel.traces();
    this.now = now;
    this.terms = terms;
    this.today = today;
    this.brokenNow = Broken.of(HouseRuleCheck.broken(book, now));
    this.options = OptionMaker.make(book, traces.field()).options();
    this.strengths = new Strengths(book, traces, options);
    this.passes = new StandingPasses(book, kernel);
    List<StandingPass> standing = passes.of(now.program());
    this.maker = new ChangeMaker(book, traces, now.program(), standing, terms, options);
    this.added =
        new AddedTanks(
            traces, book.house(), maker, options, strengths, c -> passes.quick(c.program()));
  }

  /**
   * At most two legal changes. First the best by house rules mended, less those that it breaks,
   * then by net return; then the one with the highest net return, house rules aside, where that is
   * higher still, else the next by house rules that changes something else. Empty when none helps.
   */
  public List<JudgedChange> best() {
    List<Walk> helping = walked().stream().filter(Walk::helps).toList();
    List<JudgedChange> out = new ArrayList<>();
    Optional<Walk> first = helping.stream().filter(w -> w.mended >= 0 && w.isLegal()).findFirst();
    first.map(Walk::told).ifPresent(out::add);
    Money beaten = first.map(Walk::gain).map(WORTH_IT::plus).orElse(WORTH_IT);
    Optional<Walk> highest =
        helping.stream()
            .filter(w -> w.gain().compareTo(beaten) >= 0)
            .sorted(Comparator.comparing(Walk::gain).reversed())
            .filter(Walk::isLegal)
            .findFirst();
    highest
        .or(
            () ->
                helping.stream()
                    .filter(w -> w.mended >= 0)
                    .filter(w -> first.isPresent() && !w.place().equals(first.get().place()))
                    .filter(Walk::isLegal)
                    .findFirst())
        .map(Walk::told)
        .ifPresent(out::add);
    return out;
  }

  /** One change walked in full. */
  private final class Walk {
    final SingleChange change;
    final SeasonOutcome outcome;
    final Set<Broken> broken;
    final int mended;
    private @Nullable Judgement judged;

    Walk(SingleChange change) {
      this.change = maker.filled(change);
      this.outcome = SeasonWalk.walk(book, kernel, this.change.program());
      this.broken = Broken.of(HouseRuleCheck.broken(book, outcome));
      this.mended = brokenNow.size() - broken.size();
    }

    private Money extra() {
      return change.kind() == SingleChange.Kind.ADD_PASS ? terms.extraForAddedPass() : Money.ZERO;
    }

    Optional<Money> cost() {
      return outcome.cost().flatMap(c -> now.cost().map(c::minus)).map(extra()::plus);
    }

    Optional<Money> net() {
      return outcome.net().flatMap(n -> now.net().map(n::minus)).map(m -> m.minus(extra()));
    }

    /** By net return, or by the yield alone where a price is missing. */
    Money gain() {
      return net().orElseGet(() -> now.loss().minus(outcome.loss()));
    }

    /** Mends something or brings something, and saves nothing at the cost of control. */
    boolean helps() {
      return mended > 0 || gain().compareTo(WORTH_IT) >= 0 && holdsDrivers();
    }

    private boolean holdsDrivers() {
      return now.weeds().stream()
          .filter(w -> w.pressure().driver().isDriver())
          .allMatch(
              w ->
                  outcome.weed(w.pressure().weed().id()).controlPct()
                      >= w.controlPct() - SAME_CONTROL);
    }

    /** Of one more pass the best day is enough, and of one product that goes the best exchange. */
    List<String> place() {
      return switch (change.kind()) {
        case ADD_PASS -> List.of("another pass");
        case RAISE_RATE, EXCHANGE_PRODUCT, LEAVE_OUT_PRODUCT ->
            List.of(change.pass().toString(), change.out().orElseThrow().product().id().value());
        case ADD_PRODUCT, MOVE_PASS -> List.of(change.pass().toString(), change.kind().word());
      };
    }

    boolean isLegal() {
      return judgement().verdict() != Verdict.BLOCKED;
    }

    private Judgement judgement() {
      if (judged == null) {
        judged = ProgramJudge.judge(book, traces, outcome, today);
      }
      return judged;
    }

    JudgedChange told() {
      return new JudgedChange(
          change,
          outcome,
          judgement(),
          Broken.without(brokenNow, broken),
          Broken.without(broken, brokenNow),
          cost(),
          net());
    }
  }

  private List<Walk> walked() {
    List<Scored> all = new ArrayList<>();
    maker.ofPasses().forEach(c -> all.add(new Scored(c, passes.quick(c.program()))));
    added.all().forEach(c -> all.add(new Scored(c, passes.quick(c.program()))));
    // The sort is stable, so that equals keep the order in which they were made.
    all.sort(Comparator.comparingDouble(Scored::score).reversed());
    Map<String, SingleChange> chosen = new LinkedHashMap<>();
    for (SingleChange.Kind kind : SingleChange.Kind.values()) {
      choose(all.stream().filter(s -> s.change.kind() == kind).toList(), WALKED_OF_A_KIND, chosen);
    }
    choose(all.stream().filter(s -> bringsASite(s.change)).toList(), WALKED_FOR_A_SITE, chosen);
    List<Walk> out = new ArrayList<>();
    chosen.values().forEach(c -> out.add(new Walk(c)));
    out.sort(
        Comparator.comparingInt((Walk w) -> w.mended)
            .thenComparing(Walk::gain)
            .reversed()
            .thenComparing(w -> w.change.kind())
            .thenComparing(w -> w.change.pass()));
    return out;
  }

  private void choose(List<Scored> sorted, int most, Map<String, SingleChange> chosen) {
    sorted.stream()
        .map(Scored::change)
        .filter(c -> passes.isLegalInOrder(c.program()))
        .limit(most)
        .forEach(c -> chosen.putIfAbsent(c.key(), c));
  }

  private boolean bringsASite(SingleChange change) {
    if (change.in().isEmpty() || change.kind() == SingleChange.Kind.ADD_PASS) {
      return false;
    }
    Dose in = change.in().get(0);
    Site site = in.actives().get(0).ingredient().site();
    boolean held =
        now.passes().stream()
            .filter(p -> p.planned().equals(change.pass()))
            .flatMap(p -> p.mix().actives().stream())
            .anyMatch(a -> a.ingredient().site().equals(site));
    return !held && options.stream().filter(o -> o.dose().equals(in)).anyMatch(this::works);
  }

  private boolean works(DoseOption option) {
    for (int d = 0; d < strengths.drivers().size(); d++) {
      if (strengths.foliar(option.index(), d) || strengths.soil(option.index(), d)) {
        return true;
      }
    }
    return false;
  }
}
