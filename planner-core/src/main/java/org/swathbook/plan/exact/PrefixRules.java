package org.swathbook.plan.exact;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.HouseRules;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.plan.draft.HouseDeficit;
import org.swathbook.rules.HouseTests;
import org.swathbook.rules.TankOffers;
import org.swathbook.season.Kernel;
import org.swathbook.season.PassLayers;
import org.swathbook.season.PreparedPass;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.Standing;
import org.swathbook.season.outcome.WeedOutcome;

/**
 * The house rules that the first passes of a program settle, whatever comes after them: foliar
 * sites on what stands, soil sites of a layer, overlaps of layers that follow each other, and
 * windows met. What a pass that is made lacks is not held against a program.
 */
final class PrefixRules {
  private final Kernel kernel;
  private final HouseRules house;
  private final TankOffers offers;
  private final Set<String> mayBreak;
  private final List<Integer> drivers;
  private final Map<Pair, WeedOutcome.LayerOverlap> overlaps = new HashMap<>();

  private record Pair(PreparedPass first, PreparedPass next, int driver) {}

  /**
   * @param mayBreak names of the rules that a program may break
   */
  PrefixRules(Candidates candidates, HouseRules house, Set<String> mayBreak) {
    this.kernel = candidates.kernel();
    this.drivers = candidates.drivers();
    this.house = house;
    this.offers = candidates.offers();
    this.mayBreak = mayBreak;
  }

  /**
   * What the passes break with one more; null when that is a rule that may not be broken.
   *
   * @param broken what they break without it
   * @param standing what stands on its date after the passes before it; asked for only when the
   *     other rules let the pass come
   */
  @Nullable Breach after(
      Prefix before, Breach broken, Candidate next, Supplier<Standing> standing) {
    Breach out = windows(before, broken, next);
    out = out == null ? null : soilSites(before, out, next);
    out = out == null ? null : overlap(before, out, next);
    return out == null ? null : foliarSites(out, next, standing.get());
  }

  private @Nullable Breach windows(Prefix before, Breach broken, Candidate next) {
    List<PreparedPass> passes = before.prepared();
    passes.add(next.pass());
    double pct = SeasonWalk.windowConfidencePct(passes, kernel.traces().years().size());
    if (!HouseTests.isShortOfWindows(house, pct)) {
      return broken;
    }
    String rule = HouseRuleCheck.WINDOW_CONFIDENCE;
    return mayBreak.contains(rule)
        ? broken.withWindows(HouseDeficit.of(rule, 100 * house.windowConfidence() - pct))
        : null;
  }

  private @Nullable Breach soilSites(Prefix before, Breach broken, Candidate next) {
    Breach out = broken;
    for (int d = 0; d < drivers.size() && out != null; d++) {
      int driver = d;
      if (isLayer(next.laid(), d)) {
        boolean first = before.laid().stream().noneMatch(p -> isLayer(p, driver));
        int asked = HouseTests.soilSitesOfLayer(house, first);
        int has = next.laid().layers().get(d).effectiveSites();
        if (has < asked) {
          out = with(out, HouseRuleCheck.MIN_SOIL_SITES, asked - has);
        }
      }
    }
    return out;
  }

  private boolean isLayer(Laid pass, int driver) {
    return HouseTests.isLayer(pass.layers().get(driver).years(), kernel.traces().years().size());
  }

  private @Nullable Breach overlap(Prefix before, Breach broken, Candidate next) {
    Breach out = broken;
    List<Laid> earlier = before.laid();
    for (int d = 0; d < drivers.size() && out != null; d++) {
      if (next.laid().layers().get(d).inSomeYear()) {
        for (int p = earlier.size() - 1; p >= 0; p--) {
          Laid last = earlier.get(p);
          if (last.layers().get(d).inSomeYear()) {
            WeedOutcome.LayerOverlap o = overlap(last, next.laid(), d);
            if (HouseTests.isShort(house, o)) {
              out =
                  with(
                      out,
                      HouseRuleCheck.MIN_LAYER_OVERLAP,
                      house.minLayerOverlapDays() - o.medianDays());
            }
            break;
          }
        }
      }
    }
    return out;
  }

  private WeedOutcome.LayerOverlap overlap(Laid first, Laid next, int driver) {
    return overlaps.computeIfAbsent(
        new Pair(first.pass(), next.pass(), driver),
        p -> {
          PassLayers layers = first.layers().get(driver);
          return layers.overlap(kernel, drivers.get(driver), next.layers().get(driver));
        });
  }

  private @Nullable Breach foliarSites(Breach broken, Candidate next, Standing standing) {
    Breach out = broken;
    for (int w : drivers) {
      if (standing.stands(w) && out != null) {
        int has = standing.effectiveSites(kernel, next.pass(), w);
        int asked =
            offers.foliarSitesAsked(
                kernel.traces().weeds().get(w), next.pass().timing(), true, has);
        if (has < asked) {
          out = with(out, HouseRuleCheck.MIN_FOLIAR_SITES, asked - has);
        }
      }
    }
    return out;
  }

  private @Nullable Breach with(Breach broken, String rule, double missed) {
    return mayBreak.contains(rule) ? broken.with(rule, HouseDeficit.of(rule, missed)) : null;
  }
}
