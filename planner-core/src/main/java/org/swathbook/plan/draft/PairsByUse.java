package org.swathbook.plan.draft;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.Use;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.program.ActiveDose;

/**
 * Whether two doses may stand in one tank. The rules on pairs know of a day nothing but the use of
 * each label that speaks on it, so two doses are judged once for all days on which the same two
 * uses speak. Which use speaks rests on how much of its active and of its site the tank brings: two
 * doses of one site are judged day by day. Confined to one thread.
 */
final class PairsByUse {
  private final Rules rules;
  private final Map<Spoken, Optional<Use>> uses = new HashMap<>();
  private final Map<Pair, Boolean> known = new HashMap<>();

  /** The rules on one date of the grid. */
  interface Rules {
    /** The use that speaks for the only active of a dose alone in a tank; empty for none. */
    Optional<Use> use(DoseOption dose, int date);

    boolean allow(DoseOption a, DoseOption b, int date);
  }

  PairsByUse(Rules rules) {
    this.rules = rules;
  }

  private record Spoken(int option, int date) {}

  private record Pair(int a, @Nullable Use ofA, int b, @Nullable Use ofB) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Pair o
          && a == o.a
          && b == o.b
          && Objects.equals(ofA, o.ofA)
          && Objects.equals(ofB, o.ofB);
    }

    @Override
    public int hashCode() {
      return 31 * a + b;
    }
  }

  boolean allow(DoseOption a, DoseOption b, int date) {
    if (a.dose().actives().size() != 1
        || b.dose().actives().size() != 1
        || site(a).equals(site(b))) {
      return rules.allow(a, b, date);
    }
    Pair pair =
        new Pair(a.index(), use(a, date).orElse(null), b.index(), use(b, date).orElse(null));
    return known.computeIfAbsent(pair, p -> rules.allow(a, b, date));
  }

  private Optional<Use> use(DoseOption option, int date) {
    return uses.computeIfAbsent(new Spoken(option.index(), date), s -> rules.use(option, date));
  }

  private static Site site(DoseOption option) {
    List<ActiveDose> actives = option.dose().actives();
    return actives.get(0).ingredient().site();
  }
}
