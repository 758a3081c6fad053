package org.swathbook.plan.exact;

import org.swathbook.plan.draft.Laid;
import org.swathbook.plan.draft.Stop;
import org.swathbook.season.PreparedPass;

/**
 * A tank on a date that the exact search may put into a program.
 *
 * @param cost dollars on an acre with the trip, in the mean of the years, of which those in which
 *     the pass is missed cost nothing
 * @param laid the pass and what it lays into the soil against each driver weed
 */
record Candidate(Stop stop, Laid laid, double cost) {

  PreparedPass pass() {
    return laid.pass();
  }

  int date() {
    return stop.date();
  }
}
