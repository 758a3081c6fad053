package org.swathbook.plan.bound;

import java.util.Set;
import org.swathbook.catalog.Site;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.season.Reach;

/**
 * A dose on a day, of which tanks are made.
 *
 * @param day place among the days
 * @param missed years in which the dose cannot be sprayed
 * @param reach what it does at most
 */
record Part(int day, DoseOption option, Site site, Set<Integer> missed, Reach reach) {
  double cost() {
    return option.cost().dollars();
  }
}
