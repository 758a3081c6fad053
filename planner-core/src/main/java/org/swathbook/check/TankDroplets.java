package org.swathbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.DropletClass;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TankTerms.DropletRange;
import org.swathbook.rules.ActiveUse;

/**
 * The droplet classes (ANSI/ASABE S572) that every label of a tank allows, as far as they state it.
 *
 * @param allowed empty when no label states classes, or when those stated have none in common
 * @param unknown actives of which it is not known, in the order of the tank
 */
public record TankDroplets(Optional<DropletRange> allowed, List<String> unknown) {

  public TankDroplets {
    unknown = List.copyOf(unknown);
  }

  public static TankDroplets of(List<ActiveUse> tank) {
    List<DropletRange> stated = new ArrayList<>();
    List<String> unknown = new ArrayList<>();
    for (ActiveUse a : tank) {
      Stated<DropletRange> range = a.terms().tank().droplets();
      range.find().ifPresent(stated::add);
      if (range.isUnknown() && !unknown.contains(a.ingredient().name())) {
        unknown.add(a.ingredient().name());
      }
    }
    return new TankDroplets(common(stated), unknown);
  }

  private static Optional<DropletRange> common(List<DropletRange> ranges) {
    Optional<DropletClass> finest =
        ranges.stream().map(DropletRange::finest).max(DropletClass::compareTo);
    Optional<DropletClass> coarsest =
        ranges.stream().map(DropletRange::coarsest).min(DropletClass::compareTo);
    return finest.isPresent() && coarsest.isPresent() && finest.get().compareTo(coarsest.get()) <= 0
        ? Optional.of(new DropletRange(finest.get(), coarsest.get()))
        : Optional.empty();
  }

  /** {@code coarse to ultra coarse}; empty when there is no range. */
  public Optional<String> words() {
    return allowed.map(
        r ->
            r.finest() == r.coarsest()
                ? r.finest().spelling()
                : r.finest().spelling() + " to " + r.coarsest().spelling());
  }
}
