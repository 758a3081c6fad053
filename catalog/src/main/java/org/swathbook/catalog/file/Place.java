package org.swathbook.catalog.file;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;

/**
 * Where a value stands in an entry, as the paths of {@code sources} name it. A step may be known by
 * several names (the positions of a use) and may be left out of a path (crop and position of a
 * use).
 */
record Place(List<Step> steps) {

  static final Place ROOT = new Place(List.of());

  private record Step(Set<String> names, boolean skippable) {}

  Place then(String key) {
    return with(new Step(Set.of(key), false));
  }

  /** The use of a crop in these positions. */
  static Place ofUse(String crop, Collection<String> positions) {
    return ROOT.then("uses")
        .with(new Step(Set.of(crop), true))
        .with(new Step(Set.copyOf(positions), true));
  }

  private Place with(Step step) {
    List<Step> more = new ArrayList<>(steps);
    more.add(step);
    return new Place(List.copyOf(more));
  }

  /** Whether the path names this place or one that holds it. */
  boolean isUnder(List<String> path) {
    return isUnder(path, 0, 0);
  }

  private boolean isUnder(List<String> path, int i, int step) {
    if (i == path.size()) {
      return true;
    }
    if (step == steps.size()) {
      return false;
    }
    Step here = steps.get(step);
    return here.names().contains(path.get(i)) && isUnder(path, i + 1, step + 1)
        || here.skippable() && isUnder(path, i, step + 1);
  }

  /** {@code uses.corn.post.cap}; of several names the first in order. */
  @Override
  public String toString() {
    return String.join(
        ".", steps.stream().map(s -> s.names().stream().sorted().findFirst().orElse("")).toList());
  }
}
