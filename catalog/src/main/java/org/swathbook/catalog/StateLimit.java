package org.swathbook.catalog;

import java.util.Set;

/** States that alone are allowed, or that are refused; both empty for no limit. */
public record StateLimit(Set<String> only, Set<String> refused) {

  public static final StateLimit ANYWHERE = new StateLimit(Set.of(), Set.of());

  public StateLimit {
    only = Ordered.set(only);
    refused = Ordered.set(refused);
  }
}
