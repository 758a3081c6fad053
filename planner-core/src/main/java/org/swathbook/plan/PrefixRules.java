package org.swathbook.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.swathbook.book.HouseRules;
import org.swathbook.rules.HouseTests;
import org.swathbook.season.Kernel;
import org.swathbook.season.PassLayers;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.Standing;

/**
 * The house rules that the first passes of a program settle, whatever comes after them: foliar
 * sites on what stands, soil sites of a layer, overlaps of layers that follow each other, and
 * windows met.
 */
final class PrefixRules {
  private final Kernel kernel;
  private final HouseRules house;
  private final List<Integer> drivers;
  private final Map<Pair, Boolean> overlaps = new HashMap<>();

  private record Pair(Stop first, Stop next, int driver) {}

  PrefixRules(Candidates candidates, HouseRules house) {
    this.kernel = candidates.kernel();
    this.drivers = candidates.drivers();
    this.house = house;
  }

  /**
   * Whether one more pass breaks none of these rules.
   *
   * @param standing what stands on its date after the passes before it
   */
  boolean allow(Prefix before, Candidate next, Standing standing) {
    return meetWindows(before, next)
        && haveSoilSites(before, next)
        && overlap(before, next)
        && haveFoliarSites(next, standing);
  }

  private boolean meetWindows(Prefix before, Candidate next) {
    double pct =
        SeasonWalk.windowConfidencePct(
            before.then(next).prepared(), kernel.traces().years().size());
    return !HouseTests.isShortOfWindows(house, pct);
  }

  private boolean haveSoilSites(Prefix before, Candidate next) {
    for (int d = 0; d < drivers.size(); d++) {
      int driver = d;
      if (isLayer(next, d)) {
        boolean first = before.passes().stream().noneMatch(p -> isLayer(p, driver));
        int asked = first ? house.minSoilSitesFirst() : house.minSoilSitesOverlap();
        if (next.layers().get(d).effectiveSites() < asked) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean isLayer(Candidate pass, int driver) {
    return HouseTests.isLayer(pass.layers().get(driver).years(), kernel.traces().years().size());
  }

  private boolean overlap(Prefix before, Candidate next) {
    for (int d = 0; d < drivers.size(); d++) {
      if (next.layers().get(d).inSomeYear()) {
        for (int p = before.size() - 1; p >= 0; p--) {
          Candidate last = before.passes().get(p);
          if (last.layers().get(d).inSomeYear()) {
            if (isShort(last, next, d)) {
              return false;
            }
            break;
          }
        }
      }
    }
    return true;
  }

  private boolean isShort(Candidate first, Candidate next, int driver) {
    return overlaps.computeIfAbsent(
        new Pair(first.stop(), next.stop(), driver),
        p -> {
          PassLayers layers = first.layers().get(driver);
          return HouseTests.isShort(
              house, layers.overlap(kernel, drivers.get(driver), next.layers().get(driver)));
        });
  }

  private boolean haveFoliarSites(Candidate next, Standing standing) {
    for (int w : drivers) {
      int asked = HouseTests.foliarSitesAsked(house, standing.stands(w));
      if (asked > 0 && standing.effectiveSites(kernel, next.pass(), w) < asked) {
        return false;
      }
    }
    return true;
  }
}
