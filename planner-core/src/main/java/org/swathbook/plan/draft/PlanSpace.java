package org.swathbook.plan.draft;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.swathbook.book.Field;
import org.swathbook.book.HouseRules;
import org.swathbook.catalog.IngredientId;
import org.swathbook.plan.choice.DateGrid;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.program.Anchor;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;

/**
 * What the planner may do in one field: the grid of dates, the options, and which option the use
 * rules allow on which date. The masks are compiled once from the rules themselves.
 */
public final class PlanSpace {
  private static final byte UNASKED = 0;
  private static final byte ALLOWED = 1;
  private static final byte REFUSED = 2;

  private final Field field;
  private final HouseRules house;
  private final DateGrid grid;
  private final List<DoseOption> options;
  private final PairVerdict pairs;
  private final int maxPasses;

  /** By date, then by both options: not asked yet, allowed or not. Empty until first asked. */
  private final byte[][] knownPairs;

  private final List<BitSet> legal;
  private final List<List<Integer>> legalLists;

  /** Whether a rule that judges one dose on one day lets it pass. */
  public interface UseVerdict {
    boolean allows(DoseOption option, int date);
  }

  /** Whether the rules that judge two doses in one tank let them pass. */
  public interface PairVerdict {
    boolean allows(DoseOption a, DoseOption b, int date);
  }

  public PlanSpace(
      Field field,
      HouseRules house,
      DateGrid grid,
      List<DoseOption> options,
      UseVerdict verdict,
      PairVerdict pairs) {
    this(field, house, grid, options, verdict, pairs, house.maxPasses());
  }

  public PlanSpace(
      Field field,
      HouseRules house,
      DateGrid grid,
      List<DoseOption> options,
      UseVerdict verdict,
      PairVerdict pairs,
      int maxPasses) {
    this.maxPasses = maxPasses;
    this.field = field;
    this.house = house;
    this.grid = grid;
    this.options = List.copyOf(options);
    this.pairs = pairs;
    this.legal = new ArrayList<>();
    this.legalLists = new ArrayList<>();
    this.knownPairs = new byte[grid.size()][0];
    for (int date = 0; date < grid.size(); date++) {
      BitSet allowed = new BitSet();
      List<Integer> list = new ArrayList<>();
      for (DoseOption o : options) {
        if (verdict.allows(o, date)) {
          allowed.set(o.index());
          list.add(o.index());
        }
      }
      legal.add(allowed);
      legalLists.add(List.copyOf(list));
    }
  }

  public DateGrid grid() {
    return grid;
  }

  public List<DoseOption> options() {
    return options;
  }

  public DoseOption option(int index) {
    return options.get(index);
  }

  public List<Integer> legalOn(int date) {
    return legalLists.get(date);
  }

  /** Whether all of these may go into one tank on a date. */
  public boolean legal(int date, List<Integer> tank) {
    for (int i = 0; i < tank.size(); i++) {
      if (!legal.get(date).get(tank.get(i)) || !mixes(date, tank.subList(0, i), tank.get(i))) {
        return false;
      }
    }
    return true;
  }

  /** Whether a tank takes one more dose: room, no active twice, no partner that refuses another. */
  public boolean takes(int date, List<Integer> tank, int option) {
    return tank.size() < maxProducts() && !holdsActive(tank, option) && mixes(date, tank, option);
  }

  private boolean mixes(int date, List<Integer> tank, int option) {
    for (int o : tank) {
      if (!pair(date, Math.min(o, option), Math.max(o, option))) {
        return false;
      }
    }
    return true;
  }

  private boolean holdsActive(List<Integer> tank, int option) {
    for (int o : tank) {
      if (sameActive(o, option)) {
        return true;
      }
    }
    return false;
  }

  private boolean pair(int date, int a, int b) {
    byte[] known = knownPairs[date];
    if (known.length == 0) {
      known = new byte[options.size() * options.size()];
      knownPairs[date] = known;
    }
    int at = a * options.size() + b;
    if (known[at] == UNASKED) {
      known[at] = pairs.allows(option(a), option(b), date) ? ALLOWED : REFUSED;
    }
    return known[at] == ALLOWED;
  }

  /** Whether one more pass on a date lies as far from all of a draft as the house asks. */
  public boolean hasRoom(Draft draft, int date) {
    for (Stop s : draft.stops()) {
      if (s.date() == date || !house.areApart(grid.date(s.date()), grid.date(date))) {
        return false;
      }
    }
    return true;
  }

  public boolean anythingLegal() {
    return legalLists.stream().anyMatch(l -> !l.isEmpty());
  }

  public boolean sameActive(int a, int b) {
    return option(a).ingredient().equals(option(b).ingredient());
  }

  public int maxPasses() {
    return maxPasses;
  }

  public int maxProducts() {
    return house.maxProducts();
  }

  /** All actives of a draft. */
  Set<IngredientId> actives(Draft draft) {
    Set<IngredientId> out = new TreeSet<>();
    draft.stops().forEach(s -> s.options().forEach(o -> out.add(option(o).ingredient())));
    return out;
  }

  public Mix mix(Stop stop) {
    return Mix.of(stop.options().stream().map(o -> option(o).dose()).toList());
  }

  /** The draft as a program with dates around planting. */
  public Program program(Draft draft, String name) {
    return new Program(
        name,
        field.id(),
        draft.stops().stream()
            .map(s -> new Pass(new Anchor.FromPlanting(grid.daysFromPlanting(s.date())), mix(s)))
            .toList());
  }
}
