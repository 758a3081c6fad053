package org.swathbook.plan.draft;

import java.util.List;
import org.swathbook.season.PreparedPass;

/**
 * Passes that the journal has of the season: they stand before those of every program, and no
 * program can leave them out.
 *
 * @param passes by date
 * @param cost dollars on an acre, what has no price not counted
 * @param priced whether all of them have a price; without it the net return is not known, and
 *     programs are compared by loss and cost
 */
public record PassesMade(List<PreparedPass> passes, double cost, boolean priced) {

  static final PassesMade NONE = new PassesMade(List.of(), 0, true);

  public PassesMade {
    passes = List.copyOf(passes);
  }
}
