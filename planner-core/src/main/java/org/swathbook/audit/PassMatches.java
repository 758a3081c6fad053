package org.swathbook.audit;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.swathbook.audit.JournalJudge.Made;
import org.swathbook.audit.PassMatch.Fate;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.measure.Quantity;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Mix;
import org.swathbook.rules.Say;

/**
 * Finds for each planned pass the one that was made for it: of those within a month the one that
 * shares most actives with it, then the nearest. A planned pass of which no active was sprayed was
 * left out.
 */
final class PassMatches {
  /** A pass made longer after or before its day was made for another reason: default, ours. */
  private static final int A_MONTH = 31;

  /** Nearer than this to the planned rate is the planned rate: default, ours. */
  private static final double SAME_RATE = 0.05;

  /**
   * @param on day on which it was due
   */
  record Due(LocalDate on, Mix mix) {}

  private PassMatches() {}

  /**
   * In the order of the days on which they were made, or due.
   *
   * @param queueDays as late or early as this is on time
   */
  static List<PassMatch> of(List<Due> planned, List<Made> made, int queueDays) {
    record Pair(int due, int made, long shared, long apart) {}
    List<Pair> pairs = new ArrayList<>();
    for (int d = 0; d < planned.size(); d++) {
      for (int m = 0; m < made.size(); m++) {
        Map<IngredientId, Double> is = weights(made.get(m).mix());
        long shared =
            weights(planned.get(d).mix()).keySet().stream().filter(is::containsKey).count();
        long apart = Math.abs(ChronoUnit.DAYS.between(planned.get(d).on(), made.get(m).date()));
        if (shared > 0 && apart <= A_MONTH) {
          pairs.add(new Pair(d, m, shared, apart));
        }
      }
    }
    pairs.sort(
        Comparator.comparingLong((Pair p) -> -p.shared())
            .thenComparingLong(Pair::apart)
            .thenComparingInt(Pair::due)
            .thenComparingInt(Pair::made));
    int[] of = new int[planned.size()];
    java.util.Arrays.fill(of, -1);
    boolean[] taken = new boolean[made.size()];
    for (Pair p : pairs) {
      if (of[p.due()] < 0 && !taken[p.made()]) {
        of[p.due()] = p.made();
        taken[p.made()] = true;
      }
    }
    List<PassMatch> out = new ArrayList<>();
    for (int d = 0; d < of.length; d++) {
      Due due = planned.get(d);
      out.add(
          of[d] < 0
              ? new PassMatch(
                  Optional.of(due.on()),
                  Optional.empty(),
                  Optional.empty(),
                  Fate.LEFT_OUT,
                  0,
                  names(due.mix()),
                  List.of(),
                  List.of())
              : both(due, made.get(of[d]), queueDays));
    }
    for (int m = 0; m < taken.length; m++) {
      if (!taken[m]) {
        out.add(
            new PassMatch(
                Optional.empty(),
                Optional.of(made.get(m).date()),
                Optional.of(made.get(m).id()),
                Fate.ADDED,
                0,
                List.of(),
                names(made.get(m).mix()),
                List.of()));
      }
    }
    out.sort(Comparator.comparing(p -> p.made().or(p::planned).orElseThrow()));
    return List.copyOf(out);
  }

  private static PassMatch both(Due due, Made made, int queueDays) {
    int days = (int) ChronoUnit.DAYS.between(due.on(), made.date());
    Map<IngredientId, Double> was = weights(due.mix());
    Map<IngredientId, Double> is = weights(made.mix());
    List<String> leftOut = new ArrayList<>();
    List<String> added = new ArrayList<>();
    List<String> rates = new ArrayList<>();
    for (Ingredient i : ingredients(due.mix())) {
      double planned = was.getOrDefault(i.id(), 0.0);
      Double applied = is.get(i.id());
      if (applied == null) {
        leftOut.add(i.name());
      } else if (Quantity.exceeds(Math.abs(applied - planned), SAME_RATE * planned)) {
        rates.add(
            i.name()
                + " "
                + Say.lb(applied, i.rateBasis())
                + " where "
                + Say.lb(planned, i.rateBasis())
                + " was planned");
      }
    }
    for (Ingredient i : ingredients(made.mix())) {
      if (!was.containsKey(i.id())) {
        added.add(i.name());
      }
    }
    Fate fate = Math.abs(days) <= queueDays ? Fate.ON_TIME : days > 0 ? Fate.LATE : Fate.EARLY;
    return new PassMatch(
        Optional.of(due.on()),
        Optional.of(made.date()),
        Optional.of(made.id()),
        fate,
        days,
        leftOut,
        added,
        rates);
  }

  private static List<String> names(Mix mix) {
    return ingredients(mix).stream().map(Ingredient::name).toList();
  }

  private static List<Ingredient> ingredients(Mix mix) {
    return mix.actives().stream().map(ActiveDose::ingredient).distinct().toList();
  }

  /** lb/acre by active, all its doses together. */
  private static Map<IngredientId, Double> weights(Mix mix) {
    Map<IngredientId, Double> out = new TreeMap<>();
    mix.actives().forEach(a -> out.merge(a.ingredient().id(), a.lbPerAcre(), Double::sum));
    return out;
  }
}
