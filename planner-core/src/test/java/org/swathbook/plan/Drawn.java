package org.swathbook.plan;

import net.jqwik.api.statistics.Statistics;

/** Whether what a property draws has anything in it. */
public final class Drawn {
  /** Two of three times or more it has; a property of few tries is not to fail by chance. */
  private static final double LEAST_PCT = 25;

  private Drawn() {}

  /** To be told in every try, before one without anything ends: fails where most are without. */
  public static void something(boolean there) {
    Statistics.label("something is drawn")
        .collect(there)
        .coverage(c -> c.check(true).percentage(p -> p >= LEAST_PCT));
  }
}
