package org.swathbook.plan.change;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Book;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.check.Judgement;
import org.swathbook.check.ProgramJudge;
import org.swathbook.measure.Money;
import org.swathbook.plan.draft.Broken;
import org.swathbook.rules.TankOffers;
import org.swathbook.rules.Verdict;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.SeasonOutcome;

/** One change walked in full, held against the program as it stands. */
final class WalkedChange {
  /** A gain below this many dollars an acre is no help: default, ours. */
  static final Money WORTH_IT = Money.ofDollars(1);

  /** A house rule is not given up for less than this, an acre: default, ours. */
  private static final Money RULE_WORTH = Money.ofDollars(10);

  /** Control that differs by fewer points is the same to an adviser: default, ours. */
  private static final double SAME_CONTROL = 0.5;

  private final Standing standing;
  private final SingleChange change;
  private final SeasonOutcome outcome;
  private final Set<Broken> broken;
  private @Nullable Judgement judged;

  /**
   * The program as it stands.
   *
   * @param blocked a rule blocks it
   */
  record Standing(
      Book book,
      Kernel kernel,
      TankOffers offers,
      SeasonOutcome now,
      ChangeTerms terms,
      LocalDate today,
      Set<Broken> broken,
      boolean blocked) {

    static Standing of(
        Book book, Kernel kernel, SeasonOutcome now, ChangeTerms terms, LocalDate today) {
      Judgement judged = ProgramJudge.judge(book, kernel.traces(), now, today);
      return new Standing(
          book,
          kernel,
          new TankOffers(book, kernel.traces()),
          now,
          terms,
          today,
          Broken.of(judged.brokenHouseRules()),
          judged.verdict() == Verdict.BLOCKED);
    }

    Judgement judge(SeasonOutcome outcome) {
      return ProgramJudge.judge(book, kernel.traces(), outcome, today);
    }
  }

  WalkedChange(Standing standing, SingleChange change) {
    this.standing = standing;
    this.change = change;
    this.outcome = SeasonWalk.walk(standing.book(), standing.kernel(), change.program());
    this.broken = Broken.of(HouseRuleCheck.broken(standing.book(), standing.offers(), outcome));
  }

  SingleChange change() {
    return change;
  }

  /** House rules that it mends less those that it breaks. */
  int mended() {
    return standing.broken().size() - broken.size();
  }

  private Money extra() {
    return change.kind() == SingleChange.Kind.ADD_PASS
        ? standing.terms().extraForAddedPass()
        : Money.ZERO;
  }

  Optional<Money> cost() {
    return outcome.cost().flatMap(c -> standing.now().cost().map(c::minus)).map(extra()::plus);
  }

  Optional<Money> net() {
    return outcome
        .net()
        .flatMap(n -> standing.now().net().map(n::minus))
        .map(m -> m.minus(extra()));
  }

  /** By net return, or by the yield alone where a price is missing. */
  Money gain() {
    return net().orElseGet(() -> standing.now().loss().minus(outcome.loss()));
  }

  /**
   * Mends a house rule, ends a block, or pays by what it gives back: what only saves is no help
   * against a trouble.
   */
  boolean helps() {
    return standing.blocked()
        || mended() > 0
        || gain().compareTo(WORTH_IT) >= 0
            && outcome.loss().compareTo(standing.now().loss()) < 0
            && holdsDrivers();
  }

  private Optional<NearPass> near() {
    return NearPass.of(standing.book().house(), change, outcome);
  }

  /** Net return with what each house rule mended, less those broken, is worth an acre. */
  Money worth() {
    int broken = near().isPresent() ? 1 : 0;
    return gain().plus(new Money(RULE_WORTH.cents() * (mended() - broken)));
  }

  /** What a change has to pay for the house rules that it breaks. */
  Money priceOfRules() {
    return new Money(RULE_WORTH.cents() * Math.max(0, -mended()));
  }

  private boolean holdsDrivers() {
    return standing.now().weeds().stream()
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
      case RAISE_RATE, LOWER_RATE, EXCHANGE_PRODUCT, LEAVE_OUT_PRODUCT ->
          List.of(change.pass().toString(), change.out().orElseThrow().product().id().value());
      case ADD_PRODUCT, MOVE_PASS, LEAVE_OUT_PASS ->
          List.of(change.pass().toString(), change.kind().word());
    };
  }

  boolean isLegal() {
    return judgement().verdict() != Verdict.BLOCKED;
  }

  private Judgement judgement() {
    if (judged == null) {
      judged = standing.judge(outcome);
    }
    return judged;
  }

  JudgedChange told() {
    return new JudgedChange(
        change,
        outcome,
        judgement(),
        Broken.without(standing.broken(), broken),
        Stream.concat(
                Broken.without(broken, standing.broken()).stream(),
                near().stream().map(n -> NearPass.RULE))
            .toList(),
        near(),
        cost(),
        net());
  }
}
