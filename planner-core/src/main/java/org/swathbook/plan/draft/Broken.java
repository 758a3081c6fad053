package org.swathbook.plan.draft;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.catalog.WeedId;
import org.swathbook.check.BrokenHouseRule;

/** A house rule that is broken for a weed, on whatever pass. */
public record Broken(String name, Optional<WeedId> weed) {

  public static Set<Broken> of(List<BrokenHouseRule> all) {
    Set<Broken> out = new LinkedHashSet<>();
    all.forEach(b -> out.add(new Broken(b.name(), b.weed())));
    return out;
  }

  /** Names of those that are not among others, each once. */
  public static List<String> without(Set<Broken> all, Set<Broken> gone) {
    return all.stream().filter(b -> !gone.contains(b)).map(Broken::name).distinct().toList();
  }
}
