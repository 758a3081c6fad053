package org.swathbook.plan.draft;

import java.util.List;

/** What a draft is worth, and whether it may be. */
public interface Evaluator {

  /**
   * A quick score in dollars per acre: net return, less a little for driver weeds that are not well
   * controlled. It orders neighbours; it does not know the house rules about sites and layers.
   */
  double quick(Draft draft);

  /** The same, less what the search is fined for house rules, as far as a score tells it. */
  double quickGoal(Draft draft);

  /**
   * The same, less what it is fined for sites, overlaps and windows. What a walk may still object
   * to is that a driver weed escapes with a site gone.
   */
  double goal(Draft draft);

  /** Whether the rules about passes in order (caps, counts, intervals) let it pass. */
  boolean legal(Draft draft);

  /** A legal draft walked through every year in full. */
  Walked full(Draft draft);

  /** Says that the scores of these are asked for next; who can finds them side by side. */
  default void expect(List<Draft> drafts) {}

  /** Legal drafts walked in full, in their order. */
  default List<Walked> full(List<Draft> drafts) {
    return drafts.stream().map(this::full).toList();
  }
}
