package org.swathbook.plan.draft;

import java.util.Collections;
import java.util.List;

/**
 * On which one foliar site passes have last rested on each driver weed that stood.
 *
 * @param byDriver bit n for site n, in the order of the driver weeds; 0 where no pass rested on one
 *     site alone
 */
public record LoneSites(List<Long> byDriver) {

  public LoneSites {
    byDriver = List.copyOf(byDriver);
  }

  static LoneSites none(int drivers) {
    return new LoneSites(Collections.nCopies(drivers, 0L));
  }
}
