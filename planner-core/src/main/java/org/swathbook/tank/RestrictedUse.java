package org.swathbook.tank;

import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/**
 * Which partners are for certified applicators only, and of which that is not known; names in the
 * order of the alphabet.
 */
public record RestrictedUse(List<String> restricted, List<String> unknown) {

  public RestrictedUse {
    restricted = List.copyOf(restricted);
    unknown = List.copyOf(unknown);
  }

  public static RestrictedUse of(Collection<Partner> partners) {
    TreeSet<String> restricted = new TreeSet<>();
    TreeSet<String> unknown = new TreeSet<>();
    for (Partner p : partners) {
      if (p.terms().restrictedUse().isUnknown()) {
        unknown.add(p.ingredient().name());
      } else if (p.terms().restrictedUse().find().orElse(false)) {
        restricted.add(p.ingredient().name());
      }
    }
    unknown.removeAll(restricted);
    return new RestrictedUse(List.copyOf(restricted), List.copyOf(unknown));
  }
}
