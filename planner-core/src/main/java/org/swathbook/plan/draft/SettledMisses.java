package org.swathbook.plan.draft;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.swathbook.book.HouseRules;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.rules.TankOffers;
import org.swathbook.season.Kernel;
import org.swathbook.season.PreparedPass;
import org.swathbook.season.Standing;

/**
 * What the passes of a draft miss of the house rules about single passes: sites, overlaps and
 * windows, as a walk of the season says it. What stands on a date is kept for all drafts that begin
 * alike. Confined to one thread.
 */
final class SettledMisses {
  private final Kernel kernel;
  private final PassRules rules;
  private final List<Integer> drivers;
  private final List<Laid> made = new ArrayList<>();
  private final LoneSites loneMade;
  private final Function<Stop, PreparedPass> prepare;
  private final Map<Stop, Laid> laid = new HashMap<>();
  private final Map<Beginning, Standing> standing = new HashMap<>();

  private record Beginning(List<Stop> stops, int date) {}

  /**
   * @param made passes that every draft comes after
   * @param prepare makes a pass of a stop
   */
  SettledMisses(
      Kernel kernel,
      HouseRules house,
      TankOffers offers,
      List<PreparedPass> made,
      Function<Stop, PreparedPass> prepare) {
    this.kernel = kernel;
    this.drivers = kernel.drivers();
    this.rules = new PassRules(kernel, house, offers);
    this.prepare = prepare;
    made.forEach(p -> this.made.add(Laid.of(kernel, p, drivers)));
    this.loneMade = rules.lone(this.made);
  }

  /** Pass by pass; empty when nothing is missed. */
  List<Missed> of(Draft draft) {
    List<Missed> out = new ArrayList<>();
    PassRules.Listener listener = (rule, deficit) -> out.add(new Missed(rule, deficit));
    List<Laid> before = new ArrayList<>(made);
    List<Stop> stops = draft.stops();
    LoneSites lone = loneMade;
    for (int i = 0; i < stops.size(); i++) {
      Laid next = laid.computeIfAbsent(stops.get(i), this::lay);
      Beginning beginning = new Beginning(stops.subList(0, i), stops.get(i).date());
      lone =
          Objects.requireNonNull(
              rules.next(before, lone, next, () -> standing(beginning, before, next), listener));
      before.add(next);
    }
    double windows = rules.windows(prepared(before));
    if (windows > 0) {
      out.add(new Missed(HouseRuleCheck.WINDOW_CONFIDENCE, windows));
    }
    return out;
  }

  private Laid lay(Stop stop) {
    return Laid.of(kernel, prepare.apply(stop), drivers);
  }

  private Standing standing(Beginning beginning, List<Laid> before, Laid next) {
    return standing.computeIfAbsent(
        beginning, b -> Standing.of(kernel, prepared(before), next.pass(), drivers));
  }

  private static List<PreparedPass> prepared(List<Laid> passes) {
    List<PreparedPass> out = new ArrayList<>();
    passes.forEach(l -> out.add(l.pass()));
    return out;
  }
}
