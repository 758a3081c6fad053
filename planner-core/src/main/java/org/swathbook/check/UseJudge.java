package org.swathbook.check;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.swathbook.book.Book;
import org.swathbook.catalog.Method;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Use;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.program.SprayJob;
import org.swathbook.rules.Findings;
import org.swathbook.rules.LabelUses;
import org.swathbook.rules.PassPositions;
import org.swathbook.rules.RuleBook;
import org.swathbook.rules.Severity;
import org.swathbook.rules.UseFacts;
import org.swathbook.rules.UseRule;
import org.swathbook.rules.timing.PlantingIntervalRule;
import org.swathbook.rules.timing.StageWindowRule;

/**
 * Use rules on one active of a dose. Where several uses of the label fit, it is legal when one of
 * them allows all of it. Where none does, the use speaks that fewest blocks of day, crop and field
 * keep away: what it says holds however much another product adds, while the fewest blocks of all
 * would pass from use to use as the amount grows. Then the fewest blocks, warnings and asks.
 */
public final class UseJudge {
  private static final List<UseRule> RULES = RuleBook.ofScope(UseRule.class);

  private static final List<UseRule> OF_AMOUNT =
      RULES.stream().filter(UseRule::readsAmount).toList();

  private static final List<UseRule> OF_PLACE =
      RULES.stream().filter(r -> !r.readsAmount()).toList();

  private static final List<UseRule> BLOCKING =
      RULES.stream().filter(r -> r.card().severity() == Severity.BLOCK).toList();

  /** The same, those that look through the weather years last: a block ends the question. */
  private static final List<UseRule> QUICK_FIRST =
      Stream.concat(
              BLOCKING.stream().filter(r -> !readsEveryYear(r)),
              BLOCKING.stream().filter(UseJudge::readsEveryYear))
          .toList();

  /** From how near to harvest a spray may be meant as a harvest aid; common practice, no source. */
  private static final int HARVEST_AID_DAYS = 60;

  private UseJudge() {}

  /** The facts of every active of a planned mix, in its order; no use chosen yet. */
  public static List<UseFacts> facts(
      Book book, TraceSet traces, int pass, PassTiming timing, Mix mix) {
    return facts(
        book, traces, pass, timing, PassPositions.of(traces, timing), mix, Optional.empty());
  }

  /** The same of the first pass, with its positions at hand. */
  public static List<UseFacts> facts(
      Book book, TraceSet traces, PassTiming timing, Set<Position> positions, Mix mix) {
    return facts(book, traces, 0, timing, positions, mix, Optional.empty());
  }

  private static List<UseFacts> facts(
      Book book,
      TraceSet traces,
      int pass,
      PassTiming timing,
      Set<Position> positions,
      Mix mix,
      Optional<SprayJob> job) {
    List<UseFacts> out = new ArrayList<>();
    for (Dose dose : mix.doses()) {
      for (ActiveDose active : dose.actives()) {
        out.add(facts(book, traces, pass, timing, positions, dose, active, mix, job));
      }
    }
    return out;
  }

  /** The same of one active of a dose of the mix. */
  static UseFacts facts(
      Book book,
      TraceSet traces,
      int pass,
      PassTiming timing,
      Set<Position> positions,
      Dose dose,
      ActiveDose active,
      Mix mix,
      Optional<SprayJob> job) {
    Method method = job.map(SprayJob::method).orElse(Method.BROADCAST);
    List<Use> candidates =
        withoutHarvestAids(
            LabelUses.fitting(
                active.ingredient(),
                traces.field(),
                positions,
                dose.product().formulation(),
                method),
            timing.medianDate(),
            traces.years().get(0));
    return new UseFacts(
        book,
        traces,
        pass,
        timing,
        positions,
        dose,
        active,
        mix.lbPerAcre(active.ingredient()),
        mix.lbPerAcre(active.ingredient().site()),
        candidates,
        Optional.empty(),
        job);
  }

  /**
   * Long before harvest nobody means to dry down a crop, and what keeps such a use away would be
   * the wrong answer; where the label lists nothing else, it stays.
   */
  private static List<Use> withoutHarvestAids(List<Use> uses, LocalDate day, SeasonTrace trace) {
    if (ChronoUnit.DAYS.between(day, trace.bookDateOf(trace.harvestDay())) <= HARVEST_AID_DAYS) {
      return uses;
    }
    List<Use> others = uses.stream().filter(u -> !u.isHarvestAid()).toList();
    return others.isEmpty() ? uses : others;
  }

  /** The use that speaks; empty when the label lists none. */
  public static Optional<Use> choose(UseFacts facts) {
    List<Use> candidates = facts.candidates();
    if (candidates.size() == 1) {
      return Optional.of(candidates.get(0));
    }
    Optional<JudgedUse> best = Optional.empty();
    for (Use use : candidates) {
      JudgedUse next = judged(facts, use);
      if (best.isEmpty() || next.compareTo(best.get()) < 0) {
        best = Optional.of(next);
      }
    }
    return best.map(JudgedUse::use);
  }

  private record JudgedUse(Use use, int blocksOfPlace, Findings all)
      implements Comparable<JudgedUse> {
    @Override
    public int compareTo(JudgedUse o) {
      int c = Boolean.compare(all.isBlocked(), o.all.isBlocked());
      c = c != 0 ? c : Integer.compare(blocksOfPlace, o.blocksOfPlace);
      c = c != 0 ? c : Integer.compare(all.count(Severity.BLOCK), o.all.count(Severity.BLOCK));
      c = c != 0 ? c : Integer.compare(all.count(Severity.WARN), o.all.count(Severity.WARN));
      return c != 0 ? c : Integer.compare(all.count(Severity.ASK), o.all.count(Severity.ASK));
    }
  }

  private static JudgedUse judged(UseFacts facts, Use use) {
    UseFacts chosen = facts.choosing(use);
    Findings all = judge(OF_PLACE, chosen, Findings.counting());
    int blocksOfPlace = all.count(Severity.BLOCK);
    return new JudgedUse(use, blocksOfPlace, judge(OF_AMOUNT, chosen, all));
  }

  /** What the use rules say of an active, under the use that speaks. */
  public static Findings judge(UseFacts facts) {
    return judge(facts, choose(facts), Findings.all());
  }

  /** The same under the use that speaks, chosen before. */
  public static Findings judge(UseFacts facts, Optional<Use> chosen, Findings out) {
    return judge(RULES, chosen.map(facts::choosing).orElse(facts), out);
  }

  /** Whether no use of the label allows it; makes no words. */
  public static boolean blocks(UseFacts facts) {
    return facts.candidates().stream().allMatch(u -> isBlocked(facts.choosing(u)))
        && (!facts.candidates().isEmpty() || isBlocked(facts));
  }

  private static boolean isBlocked(UseFacts facts) {
    Findings out = Findings.counting();
    for (UseRule rule : QUICK_FIRST) {
      rule.judge(facts, out);
      if (out.isBlocked()) {
        return true;
      }
    }
    return false;
  }

  private static boolean readsEveryYear(UseRule rule) {
    return rule instanceof StageWindowRule || rule instanceof PlantingIntervalRule;
  }

  /** Whether a dose alone is refused on a date of the book's season; makes no words. */
  public static boolean blocks(Book book, TraceSet traces, PassTiming timing, Dose dose) {
    return facts(book, traces, 0, timing, Mix.of(List.of(dose))).stream()
        .anyMatch(UseJudge::blocks);
  }

  private static Findings judge(List<UseRule> rules, UseFacts facts, Findings out) {
    for (UseRule rule : rules) {
      rule.judge(facts, out);
    }
    return out;
  }
}
