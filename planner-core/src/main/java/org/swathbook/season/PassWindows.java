package org.swathbook.season;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.swathbook.book.Field;
import org.swathbook.book.HouseRules;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Use;
import org.swathbook.control.TankActive;
import org.swathbook.growth.Phases;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.UseFinder;
import org.swathbook.growth.WindowCheck;

/**
 * Whether a day of a weather year lies inside the label windows of all actives of a tank. An active
 * that has no use for the crop at all closes no window: a rule blocks it, and the years cannot tell
 * more.
 */
final class PassWindows {

  private record Key(IngredientId active, String formulation, int year) {}

  private static final byte UNTOLD = 0;
  private static final byte OPEN = 1;
  private static final byte SHUT = 2;

  private final Field field;
  private final HouseRules house;

  /** By day what was found; two threads may find the same. */
  private final Map<Key, byte[]> found = new ConcurrentHashMap<>();

  PassWindows(Field field, HouseRules house) {
    this.field = field;
    this.house = house;
  }

  boolean allow(List<TankActive> actives, SeasonTrace trace, int day) {
    for (TankActive a : actives) {
      for (String formulation : a.formulations()) {
        if (!open(a.ingredient(), formulation, trace, day)) {
          return false;
        }
      }
    }
    return true;
  }

  /**
   * Whether a sprayer that comes the house's queue of days late still finds its first suitable day
   * in all windows: so a window of four days is met now and then, one of two weeks nearly always.
   */
  boolean met(List<TankActive> actives, SeasonTrace trace, int planned) {
    int day = trace.firstSprayDay(planned + house.queueDays());
    return day < trace.days() && allow(actives, trace, day);
  }

  private boolean open(Ingredient active, String formulation, SeasonTrace trace, int day) {
    byte[] days =
        found.computeIfAbsent(
            new Key(active.id(), formulation, trace.year()), k -> new byte[trace.days()]);
    if (days[day] == UNTOLD) {
      days[day] = judge(active, formulation, trace, day) ? OPEN : SHUT;
    }
    return days[day] == OPEN;
  }

  private boolean judge(Ingredient active, String formulation, SeasonTrace trace, int day) {
    if (active.uses().stream().noneMatch(u -> u.isFor(field.crop()) && mayBeMade(u))) {
      return true;
    }
    return UseFinder.candidates(active, formulation, field, Phases.of(trace, day)).stream()
        .anyMatch(u -> mayBeMade(u) && WindowCheck.check(u, trace, day).inside());
  }

  /**
   * Not refused, and no trait needed that the field is known to lack: over such a crop no day is
   * open.
   */
  private boolean mayBeMade(Use use) {
    return !use.refused()
        && use.traits()
            .find()
            .flatMap(needed -> field.traits().map(has -> has.containsAll(needed)))
            .orElse(true);
  }
}
