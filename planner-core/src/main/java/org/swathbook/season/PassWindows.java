package org.swathbook.season;

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
import org.swathbook.growth.UseFinder;
import org.swathbook.growth.WindowCheck;

/**
 * Whether a day of a weather year lies inside the label windows of all actives of a tank, each
 * under a use that leaves its dose and the field's traits open. Where no use does, all uses of the
 * crop count, and an active that has none closes no window: a rule blocks it, and the years cannot
 * tell more.
 */
final class PassWindows {

  private record Key(IngredientId active, String formulation, double kgPerHa, int year) {}

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
        if (!open(a, formulation, trace, day)) {
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

  private boolean open(TankActive active, String formulation, SeasonTrace trace, int day) {
    byte[] days =
        found.computeIfAbsent(
            new Key(active.ingredient().id(), formulation, active.kgPerHa(), trace.year()),
            k -> new byte[trace.days()]);
    if (days[day] == UNTOLD) {
      days[day] = judge(active, formulation, trace, day) ? OPEN : SHUT;
    }
    return days[day] == OPEN;
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
