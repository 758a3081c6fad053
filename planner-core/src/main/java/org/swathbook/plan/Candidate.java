package org.swathbook.plan;

import java.util.List;
import org.swathbook.season.PassLayers;
import org.swathbook.season.PreparedPass;

/**
 * A tank on a date that the exact search may put into a program.
 *
 * @param cost dollars on an acre with the trip, in the mean of the years, of which those in which
 *     the pass is missed cost nothing
 * @param layers what it lays into the soil against each driver weed
 */
record Candidate(Stop stop, PreparedPass pass, double cost, List<PassLayers> layers) {

  Candidate {
    layers = List.copyOf(layers);
  }

  int date() {
    return stop.date();
  }
}
