package org.swathbook.catalog.file;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * Where a value stands in an entry, as the paths of {@code sources} name it. A step may be known by
 * several names (the positions of a use) and may be left out of a path (crop and position of a
 * use). A name may hold dots, as stages do.
 */
record Place(List<Step> steps) {

  static final Place ROOT = new Place(List.of());

  /** Its names, the one for people first and the one that no other step has last. */
  private record Step(List<String> names, boolean skippable) {

    String first() {
      return names.isEmpty() ? "" : names.get(0);
    }

    String last() {
      return names.isEmpty() ? "" : names.get(names.size() - 1);
    }
  }

  Place then(String key) {
    return with(new Step(List.of(key), false));
  }

  /**
   * The use of a crop in these positions.
   *
   * @param number its place among the uses of the entry, from 1
   */
  static Place ofUse(int number, String crop, Collection<String> positions) {
    return ROOT.then("uses")
        .with(new Step(List.of(crop, Integer.toString(number)), true))
        .with(new Step(positions.stream().sorted().toList(), true));
  }

  private Place with(Step step) {
    List<Step> more = new ArrayList<>(steps);
    more.add(step);
    return new Place(List.copyOf(more));
  }

  /**
   * Whether the path names this place or one that holds it; the empty path holds all. This is asked
   * for every value of every file, so it compares in place and takes nothing apart.
   */
  boolean isUnder(String path) {
    return isUnder(path, 0, 0);
  }

  private boolean isUnder(String path, int from, int step) {
    if (from >= path.length()) {
      return true;
    }
    if (step == steps.size()) {
      return false;
    }
    Step here = steps.get(step);
    for (String name : here.names()) {
      int end = from + name.length();
      if (path.startsWith(name, from)
          && (end == path.length() || path.charAt(end) == '.')
          && isUnder(path, end + 1, step + 1)) {
        return true;
      }
    }
    return here.skippable() && isUnder(path, from, step + 1);
  }

  /** The path that leads here and nowhere else, {@code uses.2.cap}. */
  String path() {
    boolean inUse = steps.size() > 2 && steps.get(1).skippable();
    List<String> keys = new ArrayList<>(steps.stream().map(Step::last).toList());
    if (inUse) {
      keys.remove(2);
    }
    return String.join(".", keys);
  }

  /** {@code uses.corn.post.cap}; of several names the first in order. */
  @Override
  public String toString() {
    return String.join(".", steps.stream().map(Step::first).toList());
  }
}
