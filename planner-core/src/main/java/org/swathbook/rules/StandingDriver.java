package org.swathbook.rules;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.book.WeedPressure;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.WalkedPasses;

/**
 * A driver weed that stands when a pass comes, as the house rule of foliar sites sees it.
 *
 * @param weed as the field lists it
 * @param sites foliar sites of the pass that are effective on it: bit n for site n
 * @param loneBefore the site of the last pass before that rested on one alone, the same way; 0 for
 *     none
 */
public record StandingDriver(WeedPressure weed, long sites, long loneBefore) {

  /**
   * Those of a walked pass.
   *
   * @param weeds of the field, in its order
   */
  static List<StandingDriver> of(WalkedPasses season, PassOutcome pass, List<WeedPressure> weeds) {
    List<StandingDriver> out = new ArrayList<>();
    for (WeedPressure weed : weeds) {
      for (PassWeed met : pass.weeds()) {
        if (weed.driver().isDriver() && met.stands() && met.weed().equals(weed.weed().id())) {
          long before = HouseTests.loneSiteBefore(season, pass.index(), met.weed());
          out.add(new StandingDriver(weed, HouseTests.sites(met), before));
        }
      }
    }
    return out;
  }

  /** How many sites are effective. */
  public int has() {
    return Long.bitCount(sites);
  }

  /** Whether it is one alone, and the one that an earlier pass rested on. */
  public boolean restsOnTheSameAgain() {
    return HouseTests.isLoneAgain(sites, loneBefore);
  }
}
