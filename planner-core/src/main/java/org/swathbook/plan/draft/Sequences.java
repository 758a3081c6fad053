package org.swathbook.plan.draft;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.program.ActiveDose;

/**
 * Whether caps, counts and intervals let the passes of a draft follow each other. The rules on
 * sequences look at one parent active at a time, in all its forms, so each is asked about alone and
 * once for each way in which it is used: most drafts are made of uses that were asked about before.
 * Confined to one thread.
 */
final class Sequences {
  /** Enough for the dates of a year and for all options. */
  private static final int BITS = 20;

  private static final long MASK = (1L << BITS) - 1;

  private final Rules rules;
  private final int[] parents;
  private final Map<Use, Boolean> known = new HashMap<>();

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
    // Sorted, the doses of a parent stand together, by date and then by option.
    long[] doses = new long[draft.products()];
    int n = 0;
    for (Stop stop : draft.stops()) {
      for (int option : stop.options()) {
        doses[n++] = ((long) parents[option] << (2 * BITS)) | ((long) stop.date() << BITS) | option;
      }
    }
    Arrays.sort(doses);
    int from = 0;
    while (from < n) {
      int to = from + 1;
      while (to < n && parent(doses[to]) == parent(doses[from])) {
        to++;
      }
      if (!known.computeIfAbsent(new Use(Arrays.copyOfRange(doses, from, to)), this::ask)) {
        return false;
      }
      from = to;
    }
    return true;
  }

  private static long parent(long dose) {
    return dose >> (2 * BITS);
  }

  private boolean ask(Use use) {
    List<Stop> stops = new ArrayList<>();
    for (long dose : use.doses) {
      add(stops, (int) ((dose >> BITS) & MASK), (int) (dose & MASK));
    }
    return rules.allow(new Draft(stops));
  }

  /** All doses of one parent in a draft. */
  private static final class Use {
    private final long[] doses;

    Use(long[] doses) {
      this.doses = doses;
    }

    @Override
    public boolean equals(@Nullable Object o) {
      return o instanceof Use u && Arrays.equals(doses, u.doses);
    }

    @Override
    public int hashCode() {
      return Arrays.hashCode(doses);
    }
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
