package org.swathbook.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.swathbook.book.Field;
import org.swathbook.book.HouseRules;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Use;
import org.swathbook.control.TankActive;
import org.swathbook.growth.Phases;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.TraceSet;
import org.swathbook.growth.UseFinder;
import org.swathbook.growth.WindowCheck;

/**
 * Whether a day of a weather year lies inside the label windows of all actives of a tank, each
 * under a use that leaves its dose and the field's traits open. Where no use does, all uses of the
 * crop count, and an active that has none closes no window: a rule blocks it, and the years cannot
 * tell more.
 */
final class PassWindows {

  private record Key(IngredientId active, String formulation, double kgPerHa) {}

  private static final byte UNTOLD = 0;
  private static final byte OPEN = 1;
  private static final byte SHUT = 2;

  private final Field field;
  private final HouseRules house;
  private final List<SeasonTrace> years;
  private final Map<Key, OfActive> known = new ConcurrentHashMap<>();

  PassWindows(TraceSet traces, HouseRules house) {
    this.field = traces.field();
    this.house = house;
    this.years = traces.years();
  }

  OfTank of(List<TankActive> actives) {
    List<OfActive> all = new ArrayList<>();
    for (TankActive a : actives) {
      for (String formulation : a.formulations()) {
        all.add(
            known.computeIfAbsent(
                new Key(a.ingredient().id(), formulation, a.kgPerHa()),
                k -> new OfActive(a, formulation)));
      }
    }
    return new OfTank(all);
  }

  /** Of all actives of a tank in every form that is in it. */
  final class OfTank {
    private final List<OfActive> all;

    private OfTank(List<OfActive> all) {
      this.all = all;
    }

    boolean allow(int year, int day) {
      for (OfActive active : all) {
        if (!active.open(year, day)) {
          return false;
        }
      }
      return true;
    }

    /**
     * Whether a sprayer that comes the house's queue of days late still finds its first suitable
     * day in all windows: so a window of four days is met now and then, one of two weeks nearly
     * always.
     */
    boolean met(int year, int planned) {
      int day = years.get(year).firstSprayDay(planned + house.queueDays());
      return day < years.get(year).days() && allow(year, day);
    }
  }

  private final class OfActive {
    private final TankActive active;
    private final String formulation;

    /** By year and day what was found; two threads may find the same. */
    private final byte[][] found;

    OfActive(TankActive active, String formulation) {
      this.active = active;
      this.formulation = formulation;
      this.found = new byte[years.size()][];
      for (int y = 0; y < found.length; y++) {
        found[y] = new byte[years.get(y).days()];
      }
    }

    boolean open(int year, int day) {
      byte[] days = found[year];
      if (days[day] == UNTOLD) {
        days[day] = judge(active, formulation, years.get(year), day) ? OPEN : SHUT;
      }
      return days[day] == OPEN;
    }
  }

  private boolean judge(TankActive active, String formulation, SeasonTrace trace, int day) {
    Ingredient ingredient = active.ingredient();
    if (ingredient.uses().stream().noneMatch(u -> u.isFor(field.crop()) && !u.refused())) {
      return true;
    }
    Position.Phase phase = Phases.of(trace, day);
    List<Use> open = UseFinder.open(ingredient, formulation, field, active.kgPerHa());
    List<Use> uses =
        open.isEmpty() ? UseFinder.candidates(ingredient, formulation, field, phase) : open;
    return uses.stream()
        .anyMatch(u -> !u.refused() && u.isIn(phase) && WindowCheck.check(u, trace, day).inside());
  }
}
