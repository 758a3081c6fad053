package org.swathbook.plan;

import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.swathbook.book.Book;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * A limit of what is laid out: something asked of a plan, or a house rule on its passes, products
 * or days. It keeps the planner from programs, and judges none that is written.
 *
 * @param key the option as it is typed, or the key of the house rules
 * @param limit what it asks, in words
 * @param lifted what would be planned from without it
 * @param beyond how far a program goes beyond it, dollars, days or a number; 0 when it keeps to it
 * @param met what a program has of that which is limited, in words
 * @param binds whether a program stands so near to it that one step more would go beyond it
 */
public record PlanLimit(
    String key,
    String limit,
    Asked lifted,
    ToDoubleFunction<SeasonOutcome> beyond,
    Function<SeasonOutcome, String> met,
    Predicate<SeasonOutcome> binds) {

  /** Whether it was asked of this plan; else it is the house's. */
  public boolean isAsked() {
    return key.startsWith("--");
  }

  /** A book, and what is asked beside its house rules. */
  public record Asked(Book book, PlanWishes wishes) {}
}
