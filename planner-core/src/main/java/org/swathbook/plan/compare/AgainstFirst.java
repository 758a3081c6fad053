package org.swathbook.plan.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.measure.Money;
import org.swathbook.measure.Numbers;
import org.swathbook.rules.Severity;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;

/**
 * A program held against the first of a comparison, in words, each difference by itself.
 *
 * @param givesUp where it does worse
 * @param gains where it does better
 */
public record AgainstFirst(List<String> givesUp, List<String> gains) {
  /**
   * Percentages that differ by fewer points are the same to an adviser: default, ours, as in a
   * plan.
   */
  private static final double SAME_POINTS = 0.5;

  /** The first itself. */
  public static final AgainstFirst NOTHING = new AgainstFirst(List.of(), List.of());

  public AgainstFirst {
    givesUp = List.copyOf(givesUp);
    gains = List.copyOf(gains);
  }

  /** Whether the two come to the same in all that is held against each other. */
  public boolean isNothing() {
    return givesUp.isEmpty() && gains.isEmpty();
  }

  public static AgainstFirst of(ComparedProgram.Judged first, ComparedProgram.Judged other) {
    Difference d = new Difference();
    SeasonOutcome a = first.outcome();
    SeasonOutcome b = other.outcome();
    d.money("costs $", a.cost(), b.cost(), " more", " less", -1);
    d.money("net return $", a.net(), b.net(), " lower", " higher", 1);
    d.money(
        "net return of the worst year $",
        first.worstYearNet(),
        other.worstYearNet(),
        " lower",
        " higher",
        1);
    d.passes(a.passes().size(), b.passes().size());
    for (WeedOutcome w : b.weeds()) {
      if (w.pressure().driver().isDriver()) {
        d.weed(w.pressure().weed().name(), a.weed(w.pressure().weed().id()), w);
      }
    }
    d.points(
        "years with every pass in its windows",
        a.windowConfidencePct(),
        b.windowConfidencePct(),
        true);
    d.names(
        "breaks ",
        "keeps ",
        first.judgement().brokenNames(),
        other.judgement().brokenNames(),
        " of the house");
    d.names("blocked by ", "not blocked by ", blocks(first), blocks(other), "");
    return new AgainstFirst(d.worse, d.better);
  }

  private static List<String> blocks(ComparedProgram.Judged p) {
    return p.judgement().findings().stream()
        .filter(f -> f.severity() == Severity.BLOCK)
        .map(f -> f.rule().value())
        .distinct()
        .toList();
  }

  /** Collects differences on the side on which they belong. */
  private static final class Difference {
    private final List<String> worse = new ArrayList<>();
    private final List<String> better = new ArrayList<>();

    /**
     * @param sign 1 when more money is better, -1 when it is worse
     */
    void money(
        String what,
        Optional<Money> first,
        Optional<Money> other,
        String worseWord,
        String betterWord,
        int sign) {
      if (first.isEmpty() || other.isEmpty()) {
        return;
      }
      long cents = sign * other.get().minus(first.get()).cents();
      String amount = what + new Money(Math.abs(cents));
      if (cents < 0) {
        worse.add(amount + worseWord);
      } else if (cents > 0) {
        better.add(amount + betterWord);
      }
    }

    void passes(int first, int other) {
      int n = Math.abs(other - first);
      String many = n + (n == 1 ? " pass " : " passes ");
      if (other > first) {
        worse.add(many + "more");
      } else if (other < first) {
        better.add(many + "fewer");
      }
    }

    void weed(String name, WeedOutcome first, WeedOutcome other) {
      points(name + " control", first.controlPct(), other.controlPct(), true);
      points(
          name + " control in its worst year",
          first.worstYearControlPct(),
          other.worstYearControlPct(),
          true);
      points(
          name + " control without the site missed most",
          first.controlPctWithoutWeakest(),
          other.controlPctWithoutWeakest(),
          true);
      points(name + " emergence exposed", first.exposedPct(), other.exposedPct(), false);
    }

    void points(String what, double first, double other, boolean moreIsBetter) {
      if (!(Math.abs(other - first) >= SAME_POINTS)) {
        return;
      }
      (other > first == moreIsBetter ? better : worse)
          .add(
              what
                  + " "
                  + Numbers.fixed(other, 1)
                  + " instead of "
                  + Numbers.fixed(first, 1)
                  + " %");
    }

    void names(
        String worseWord, String betterWord, List<String> first, List<String> other, String after) {
      Set<String> more = new LinkedHashSet<>(other);
      first.forEach(more::remove);
      Set<String> fewer = new LinkedHashSet<>(first);
      other.forEach(fewer::remove);
      if (!more.isEmpty()) {
        worse.add(worseWord + String.join(" and ", more) + after);
      }
      if (!fewer.isEmpty()) {
        better.add(betterWord + String.join(" and ", fewer) + after);
      }
    }
  }
}
