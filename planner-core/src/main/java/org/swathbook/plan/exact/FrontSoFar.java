package org.swathbook.plan.exact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.swathbook.plan.draft.Goal;
import org.swathbook.plan.draft.Walked;

/**
 * The programs of a front as far as they are known, for a search that asks whether a program may
 * still belong to it. Of programs alike in cost, loss and level the first by {@link Goal#BEST} is
 * kept, as {@link Front} does.
 */
final class FrontSoFar {
  /** Dollars for a dollar of cost at which a trade of cost for loss is looked at. */
  static final double[] PRICES = {0, 0.25, 0.5, 1, 2, 4};

  /** More than all rounding of costs and losses to cents, dollars on an acre. */
  private static final double ROUNDING = 0.02;

  private static final int LEVELS = 1 + Front.levelOf(100);

  private final List<Member> members = new ArrayList<>();
  private final List<List<Member>> steps = new ArrayList<>();

  private record Member(Walked walked, long cost, long loss, int level) {
    static Member of(Walked w) {
      return new Member(
          w, w.cost().cents(), w.outcome().loss().cents(), Front.levelOf(Front.weakest(w)));
    }

    boolean isNoWorse(Member than) {
      return cost <= than.cost && loss <= than.loss && level >= than.level;
    }
  }

  /** Takes a program in where none is at least as good, and those out that it then beats. */
  void add(Walked walked) {
    Member now = Member.of(walked);
    for (Member m : members) {
      boolean alike = m.cost == now.cost && m.loss == now.loss && m.level == now.level;
      if (m.isNoWorse(now) && !(alike && Goal.BEST.compare(walked, m.walked) < 0)) {
        return;
      }
    }
    members.removeIf(now::isNoWorse);
    members.add(now);
    steps.clear();
  }

  List<Walked> programs() {
    return members.stream().map(Member::walked).toList();
  }

  /**
   * Whether some program is no worse than one like this in all three, and better in one.
   *
   * @param level at most
   */
  boolean beats(long costCents, long lossCents, int level) {
    for (Member m : members) {
      if (m.level >= level
          && m.cost <= costCents
          && m.loss <= lossCents
          && (m.level > level || m.cost < costCents || m.loss < lossCents)) {
        return true;
      }
    }
    return false;
  }

  /**
   * The least level at which a program may still belong to the front; more than there are when it
   * may at none.
   *
   * @param costCents what it costs at least
   * @param lossCents what it loses at least
   * @param together for each of {@link #PRICES}, the least sum of its loss and so many times its
   *     cost, dollars on an acre
   */
  int leastLevel(long costCents, long lossCents, double[] together) {
    int from = 0;
    int to = LEVELS;
    while (from < to) {
      int level = (from + to) / 2;
      if (mayBelong(level, costCents, lossCents, together)) {
        to = level;
      } else {
        from = level + 1;
      }
    }
    return from;
  }

  /**
   * Whether it may cost less than some member and lose no more than the next cheaper one, members
   * below the level aside: what beats neither is beaten, and one alike to a member lies between it
   * and the next dearer one.
   */
  private boolean mayBelong(int level, long costCents, long lossCents, double[] together) {
    if (beats(costCents, lossCents, level)) {
      return false;
    }
    List<Member> cheapestFirst = steps(level);
    for (int i = 0; i <= cheapestFirst.size(); i++) {
      boolean below = i == cheapestFirst.size() || costCents < cheapestFirst.get(i).cost;
      boolean better = i == 0 || lossCents <= cheapestFirst.get(i - 1).loss;
      if (below
          && better
          && (i == 0
              || i == cheapestFirst.size()
              || trades(cheapestFirst.get(i).cost, cheapestFirst.get(i - 1).loss, together))) {
        return true;
      }
    }
    return false;
  }

  private static boolean trades(long costCents, long lossCents, double[] together) {
    for (int i = 0; i < PRICES.length; i++) {
      double most = PRICES[i] * costCents / 100 + lossCents / 100.0 + (1 + PRICES[i]) * ROUNDING;
      if (together[i] > most) {
        return false;
      }
    }
    return true;
  }

  /** Members of at least a level, cheapest first, each losing less than the one before. */
  private List<Member> steps(int level) {
    if (steps.isEmpty()) {
      List<Member> sorted =
          members.stream()
              .sorted(Comparator.comparingLong(Member::cost).thenComparingLong(Member::loss))
              .toList();
      for (int l = 0; l <= LEVELS; l++) {
        List<Member> out = new ArrayList<>();
        for (Member m : sorted) {
          if (m.level >= l && (out.isEmpty() || m.loss < out.get(out.size() - 1).loss)) {
            out.add(m);
          }
        }
        steps.add(out);
      }
    }
    return steps.get(level);
  }
}
