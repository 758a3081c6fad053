package org.swathbook.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.swathbook.program.ActiveDose;

/**
 * Whether caps, counts and intervals let the passes of a draft follow each other. The rules on
 * sequences look at one parent active at a time, in all its forms, so each is asked about alone and
 * once for each way in which it is used: most drafts are made of uses that were asked about before.
 * Confined to one thread.
 */
final class Sequences {
  private final Rules rules;
  private final int[] parents;
  private final Map<List<Stop>, Boolean> known = new HashMap<>();

  /** The rules on a draft as a whole. */
  interface Rules {
    boolean allow(Draft draft);
  }

  /**
   * @param options doses of one active each
   */
  Sequences(List<DoseOption> options, Rules rules) {
    this.rules = rules;
    this.parents = new int[options.size()];
    Map<String, Integer> numbers = new HashMap<>();
    for (DoseOption o : options) {
      List<ActiveDose> actives = o.dose().actives();
      if (actives.size() != 1) {
        throw new IllegalArgumentException(o.dose().product().id() + " brings several actives");
      }
      String parent = actives.get(0).ingredient().capGroup();
      parents[o.index()] = numbers.computeIfAbsent(parent, p -> numbers.size());
    }
  }

  boolean allow(Draft draft) {
    Map<Integer, List<Stop>> uses = new TreeMap<>();
    for (Stop stop : draft.stops()) {
      for (int option : stop.options()) {
        add(uses.computeIfAbsent(parents[option], p -> new ArrayList<>()), stop.date(), option);
      }
    }
    return uses.values().stream()
        .allMatch(u -> known.computeIfAbsent(u, k -> rules.allow(new Draft(k))));
  }

  /** Two forms of a parent in one tank stand in one stop. */
  private static void add(List<Stop> use, int date, int option) {
    int last = use.size() - 1;
    if (last >= 0 && use.get(last).date() == date) {
      use.set(last, use.get(last).with(option));
    } else {
      use.add(new Stop(date, List.of(option)));
    }
  }
}
