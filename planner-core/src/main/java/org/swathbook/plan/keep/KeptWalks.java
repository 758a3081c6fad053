package org.swathbook.plan.keep;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Book;
import org.swathbook.check.BrokenHouseRule;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.check.Judgement;
import org.swathbook.check.ProgramJudge;
import org.swathbook.measure.Money;
import org.swathbook.plan.change.SingleChange;
import org.swathbook.plan.compare.AgainstFirst;
import org.swathbook.plan.compare.ComparedProgram;
import org.swathbook.plan.draft.Broken;
import org.swathbook.plan.draft.HouseDeficit;
import org.swathbook.program.Program;
import org.swathbook.rules.TankOffers;
import org.swathbook.rules.Verdict;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.YearNet;

/** Walks and judges changed programs, each held against the written one. */
final class KeptWalks {
  private final Book book;
  private final Kernel kernel;
  private final LocalDate today;
  private final TankOffers offers;
  private Set<Broken> before = Set.of();

  KeptWalks(Book book, Kernel kernel, LocalDate today) {
    this.book = book;
    this.kernel = kernel;
    this.today = today;
    this.offers = new TankOffers(book, kernel.traces());
  }

  /** The written program, against which all others are held. */
  Walk first(Program written) {
    Walk out = of(written);
    before = out.broken();
    return out;
  }

  Walk of(Program program) {
    SeasonOutcome outcome = SeasonWalk.walk(book, kernel, program);
    return new Walk(outcome, HouseRuleCheck.broken(book, offers, outcome));
  }

  /** A program walked, and judged by the whole rule book when that is asked. */
  final class Walk {
    private final SeasonOutcome outcome;
    private final Set<Broken> broken;
    private final double deficit;
    private @Nullable Judgement judgement;

    Walk(SeasonOutcome outcome, List<BrokenHouseRule> broken) {
      this.outcome = outcome;
      this.broken = Broken.of(broken);
      this.deficit = HouseDeficit.of(broken);
    }

    SeasonOutcome outcome() {
      return outcome;
    }

    Set<Broken> broken() {
      return broken;
    }

    /** How far it is from the house rules; 0 when it meets them. */
    double deficit() {
      return deficit;
    }

    boolean meetsHouseRules() {
      return broken.isEmpty();
    }

    int newlyBroken() {
      return (int) broken.stream().filter(b -> !before.contains(b)).count();
    }

    /** Compares programs of one field; no return in itself where a price is missing. */
    Money net() {
      return outcome.net().orElseGet(() -> Money.ZERO.minus(outcome.loss()));
    }

    boolean isLegal() {
      return judgement().verdict() != Verdict.BLOCKED;
    }

    private Judgement judgement() {
      if (judgement == null) {
        judgement = ProgramJudge.judge(book, kernel.traces(), outcome, today);
      }
      return judgement;
    }

    private ComparedProgram.Judged judged() {
      return new ComparedProgram.Judged(outcome, judgement(), YearNet.worst(book, outcome));
    }

    KeptProgram told(String name, List<SingleChange> changes, Walk asWritten) {
      return new KeptProgram(
          name,
          changes,
          judged(),
          Broken.without(broken, before),
          changes.isEmpty() ? AgainstFirst.NOTHING : AgainstFirst.of(asWritten.judged(), judged()));
    }
  }
}
