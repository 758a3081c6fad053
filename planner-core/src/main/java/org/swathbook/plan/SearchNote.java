package org.swathbook.plan;

import java.util.List;
import java.util.Optional;
import org.swathbook.measure.Money;

/**
 * How the programs were found.
 *
 * @param effort spent in the end
 * @param options doses that may be chosen on some date, {@code dates} candidate dates, {@code
 *     labels} programs scored
 * @param combined passes of the best programs met, of which all programs were then compared; 0 when
 *     none were
 * @param exact whether it is proved that of all programs made of those passes none that meets the
 *     house rules has a higher net return than the first one shown; or, where none meets them, that
 *     none breaks fewer, by fewer steps, or as few for a higher net return
 * @param gap what a program made of those passes may net at most above the first one shown, dollars
 *     on an acre, whatever was not looked at: 0 when exact; empty when none were combined
 * @param gapOfAll what any legal program may net at most above the first one shown, dollars on an
 *     acre: of any of the doses, in any tanks, on any of the dates; where the first one meets the
 *     house rules, any that meets them too. A proved bound, far from sharp ({@link
 *     org.swathbook.plan.bound.Ceiling}); empty when it was not asked for
 * @param proved names of the programs shown beside the first of which the same is proved, each for
 *     what it is best at
 * @param frontPasses over how many of those passes the front is proved: every program made of them
 *     is on it or beaten by one that is in cost, loss and control with the worst site gone
 * @param leftOut products that were left out before the search and why, for the reader
 */
public record SearchNote(
    Effort effort,
    int options,
    int dates,
    int labels,
    int combined,
    boolean exact,
    Optional<Money> gap,
    Optional<Money> gapOfAll,
    List<String> proved,
    int frontPasses,
    List<String> leftOut) {

  public SearchNote {
    proved = List.copyOf(proved);
    leftOut = List.copyOf(leftOut);
  }

  /** Whether the front is proved over all passes that were combined. */
  public boolean frontExact() {
    return combined > 0 && frontPasses == combined;
  }
}
