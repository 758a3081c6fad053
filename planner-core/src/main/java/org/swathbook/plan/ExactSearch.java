package org.swathbook.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.HouseRules;
import org.swathbook.season.Kernel;
import org.swathbook.season.Loads;
import org.swathbook.season.Score;
import org.swathbook.season.Standing;

/**
 * Finds, of all programs that can be made of some candidate passes, the one with the highest net
 * return that meets the house rules, and proves that none is better: depth first by date, the most
 * promising pass first, leaving out what cannot win (branch and bound; Land & Doig 1960,
 * Econometrica 28: 497-520, from memory).
 */
final class ExactSearch {
  /** More than all rounding to cents, dollars on an acre. */
  private static final double ROUNDING = 0.02;

  private final Candidates candidates;
  private final Evaluator evaluator;
  private final Kernel kernel;
  private final PrefixRules prefixRules;
  private final SeasonRules seasonRules;
  private final int maxPasses;
  private final Set<Pruning> prunings;
  private final long mostScored;

  private @Nullable Walked best;
  private long scored;
  private boolean complete = true;

  /**
   * @param best highest net return that meets the house rules; empty when none of the programs does
   * @param exact whether that is proved; not when there were more programs to score than allowed
   * @param scored how many programs were scored
   */
  record Result(Optional<Walked> best, boolean exact, long scored) {}

  ExactSearch(
      Candidates candidates,
      HouseRules house,
      int maxPasses,
      Evaluator evaluator,
      Set<Pruning> prunings,
      long mostScored) {
    this.candidates = candidates;
    this.evaluator = evaluator;
    this.kernel = candidates.kernel();
    this.prefixRules = new PrefixRules(candidates, house);
    this.seasonRules = new SeasonRules(candidates, house);
    this.maxPasses = maxPasses;
    this.prunings = prunings;
    this.mostScored = mostScored;
  }

  /**
   * @param known a program to be beaten, made of the candidates or not
   */
  Result run(Optional<Walked> known) {
    best = known.filter(Walked::meetsHouseRules).orElse(null);
    extend(Prefix.EMPTY, kernel.score(List.of()));
    return new Result(Optional.ofNullable(best), complete, scored);
  }

  /** A pass that may come next, and the highest net return of any program that goes on with it. */
  private record Child(int candidate, double most) {}

  private void extend(Prefix prefix, Score score) {
    if (prefix.size() == maxPasses) {
      return;
    }
    List<Child> children = children(prefix, score);
    if (children.isEmpty()
        || prunings.contains(Pruning.SEQUENCE) && !evaluator.legal(prefix.draft())) {
      return;
    }
    Standing[] standing = new Standing[candidates.dates()];
    for (Child child : children) {
      if (!complete || isHopeless(child.most())) {
        return;
      }
      Candidate next = candidates.get(child.candidate());
      if (prunings.contains(Pruning.HOUSE_RULES)) {
        int date = candidates.placeOfDate(child.candidate());
        if (standing[date] == null) {
          standing[date] = Standing.of(kernel, prefix.prepared(), next.pass());
        }
        if (!prefixRules.allow(prefix, next, standing[date])) {
          continue;
        }
      }
      Prefix longer = prefix.then(next);
      if (++scored > mostScored) {
        complete = false;
        return;
      }
      Score then = kernel.score(longer.prepared());
      consider(longer, then);
      extend(longer, then);
    }
  }

  private List<Child> children(Prefix prefix, Score score) {
    int from = candidates.firstAfter(prefix.lastDate());
    int n = candidates.size();
    double[] saved = new double[n];
    double net = net(prefix, score);
    double loss = score.lossDollarsPerAcre();
    if (prunings.contains(Pruning.GAIN)) {
      if (prunings.contains(Pruning.COST) && isHopeless(net + loss - cheapest(from))) {
        return List.of();
      }
      Loads loads = kernel.loads(prefix.prepared());
      for (int c = from; c < n; c++) {
        saved[c] = Math.min(loss, candidates.gains().mostSaved(c, loads));
      }
    } else {
      Arrays.fill(saved, loss);
    }
    double[] later = later(prefix, from, saved);
    List<Child> out = new ArrayList<>();
    for (int c = from; c < n; c++) {
      double most = Double.POSITIVE_INFINITY;
      double cost = candidates.get(c).cost();
      if (prunings.contains(Pruning.COST)) {
        most = net + loss - cost;
      }
      if (prunings.contains(Pruning.GAIN)) {
        most = Math.min(most, net + saved[c] - cost + later[candidates.placeOfDate(c)]);
      }
      if (!isHopeless(most)) {
        out.add(new Child(c, most));
      }
    }
    out.sort(Comparator.comparingDouble(Child::most).reversed().thenComparingInt(Child::candidate));
    return out;
  }

  private double cheapest(int from) {
    double out = Double.POSITIVE_INFINITY;
    for (int c = from; c < candidates.size(); c++) {
      out = Math.min(out, candidates.get(c).cost());
    }
    return out;
  }

  /**
   * By the place of a pass's date, what the passes after it may bring at most: the most that one
   * pass brings on each later date, on as many of the best dates as passes are left.
   */
  private double[] later(Prefix prefix, int from, double[] saved) {
    int dates = candidates.dates();
    double[] onDate = new double[dates];
    for (int c = from; c < candidates.size(); c++) {
      int date = candidates.placeOfDate(c);
      onDate[date] = Math.max(onDate[date], saved[c] - candidates.get(c).cost());
    }
    int left = maxPasses - prefix.size() - 1;
    double[] out = new double[dates];
    double[] top = new double[left];
    for (int date = dates - 1; date >= 0; date--) {
      for (double t : top) {
        out[date] += t;
      }
      int least = 0;
      for (int i = 1; i < left; i++) {
        least = top[i] < top[least] ? i : least;
      }
      if (left > 0 && onDate[date] > top[least]) {
        top[least] = onDate[date];
      }
    }
    return out;
  }

  private void consider(Prefix program, Score score) {
    if (isHopeless(net(program, score))) {
      return;
    }
    Draft draft = program.draft();
    if (!seasonRules.allow(program.prepared(), score) || !evaluator.legal(draft)) {
      return;
    }
    Walked walked = evaluator.full(draft);
    if (walked.meetsHouseRules() && (best == null || Goal.BEST.compare(walked, best) < 0)) {
      best = walked;
    }
  }

  private static double net(Prefix program, Score score) {
    return score.weedFreeDollarsPerAcre() - score.lossDollarsPerAcre() - program.cost();
  }

  private boolean isHopeless(double most) {
    return best != null && most + ROUNDING < best.net().dollars();
  }
}
