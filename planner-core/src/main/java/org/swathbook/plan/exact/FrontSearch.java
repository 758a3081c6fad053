package org.swathbook.plan.exact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.swathbook.catalog.Site;
import org.swathbook.measure.Money;
import org.swathbook.plan.draft.Evaluator;
import org.swathbook.plan.draft.Stop;
import org.swathbook.plan.draft.Walked;
import org.swathbook.season.ControlBounds;
import org.swathbook.season.Kernel;
import org.swathbook.season.Loads;
import org.swathbook.season.Score;

/**
 * Finds, of all programs that can be made of some candidate passes, those that none beats in cost,
 * expected loss and control with the worst site gone, and proves that there are no others: depth
 * first by date, leaving out what a program of the front so far beats whatever comes after it.
 *
 * <p>Nothing of the front can be left out. Costs only grow with more passes, and cents are rounded
 * the same way up and down. What a program loses is at least what its first passes leave less what
 * later ones save at most ({@link org.swathbook.season.GainBounds}), each on a date of its own; so
 * is its loss with so many times its cost. Its control is at most that of {@link ControlAhead}, for
 * with any one site gone it is no less than with the worst one gone. Where such a program would be
 * beaten at the highest level of control that it may reach, so is each that begins with these
 * passes.
 */
final class FrontSearch {
  private static final double HALF_A_CENT_LESS = 1e-6;

  private final Candidates candidates;
  private final int maxPasses;
  private final Evaluator evaluator;
  private final FrontSoFar front;
  private final Set<Pruning> prunings;
  private final long mostScored;
  private final boolean[] settled;
  private final int lastUnsettled;
  private final Kernel kernel;
  private final ControlBounds bounds;
  private final List<Site> hardest = new ArrayList<>();

  private long scored;
  private boolean complete = true;

  /**
   * @param settled passes of which the front has all programs already; only those that hold another
   *     pass are looked at
   * @param front takes in what is found; the more it has already, the less is looked at
   * @param mostScored programs to score, with each site gone too, before it gives up
   */
  FrontSearch(
      Candidates candidates,
      Set<Stop> settled,
      int maxPasses,
      Evaluator evaluator,
      FrontSoFar front,
      Set<Pruning> prunings,
      long mostScored) {
    this.candidates = candidates;
    this.maxPasses = maxPasses;
    this.evaluator = evaluator;
    this.front = front;
    this.prunings = EnumSet.copyOf(prunings);
    this.mostScored = mostScored;
    this.settled = new boolean[candidates.size()];
    int last = -1;
    for (int c = 0; c < this.settled.length; c++) {
      this.settled[c] = settled.contains(candidates.get(c).stop());
      last = this.settled[c] ? last : c;
    }
    this.lastUnsettled = last;
    this.kernel = candidates.kernel();
    this.bounds = candidates.control();
  }

  /** Whether the front has every program that belongs to it. */
  boolean run() {
    Prefix start = candidates.start();
    if (!candidates.made().passes().isEmpty()) {
      consider(start, score(start));
    }
    extend(start, false);
    return complete;
  }

  /** How many programs were scored, with each site gone too. */
  long scored() {
    return scored;
  }

  private Score score(Prefix prefix) {
    scored++;
    return kernel.score(prefix.prepared());
  }

  /** A pass that may come next, with the least level of control that is asked of it. */
  private record Child(int place, int leastLevel, double together) {}

  /**
   * @param isNew whether one of the passes is not settled
   */
  private void extend(Prefix prefix, boolean isNew) {
    int left = maxPasses - prefix.size();
    int first = candidates.firstAfter(prefix.lastDate());
    if (left <= 0 || first == candidates.size() || !isNew && lastUnsettled < first) {
      return;
    }
    if (prunings.contains(Pruning.SEQUENCE) && !evaluator.legal(prefix.draft())) {
      return;
    }
    int[] later = new int[candidates.size() - first];
    for (int i = 0; i < later.length; i++) {
      later[i] = first + i;
    }
    ControlAhead control = new ControlAhead(bounds, candidates, prefix, later, left);
    for (Child child : children(prefix, later, left)) {
      if (scored >= mostScored) {
        complete = false;
      }
      if (!complete) {
        return;
      }
      int next = later[child.place()];
      boolean newNow = isNew || !settled[next];
      boolean leads =
          left > 1 && lastUnsettled >= candidates.firstAfter(candidates.get(next).date());
      if ((newNow || leads) && mayHold(control, child)) {
        Prefix longer = prefix.then(candidates.get(next));
        if (newNow) {
          consider(longer, score(longer));
        }
        extend(longer, newNow);
      }
    }
  }

  private boolean mayHold(ControlAhead control, Child child) {
    double asked = Front.STEP_POINTS * child.leastLevel();
    if (asked <= 0 || !prunings.contains(Pruning.CONTROL)) {
      return true;
    }
    for (int view = 0; view < control.views(); view++) {
      if (control.mostPct(view, child.place()) < asked) {
        return false;
      }
    }
    return true;
  }

  private List<Child> children(Prefix prefix, int[] later, int left) {
    int n = later.length;
    double made = candidates.made().cost();
    double before = made + prefix.cost();
    boolean gains = prunings.contains(Pruning.GAIN);
    double loss = 0;
    double[] saved = new double[n];
    if (gains) {
      scored++;
      Loads loads = kernel.loads(prefix.prepared());
      loss = loads.score().lossDollarsPerAcre();
      for (int i = 0; i < n; i++) {
        saved[i] = Math.min(loss, candidates.gains().mostSaved(later[i], loads));
      }
    }
    int prices = FrontSoFar.PRICES.length;
    double[][] gain = new double[prices][n];
    double[][] after = new double[prices][];
    for (int p = 0; p < prices; p++) {
      for (int i = 0; i < n; i++) {
        gain[p][i] = saved[i] - FrontSoFar.PRICES[p] * candidates.get(later[i]).cost();
      }
      after[p] = LaterDates.after(candidates, later, gain[p], left - 1);
    }
    List<Child> out = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Candidate c = candidates.get(later[i]);
      int date = candidates.placeOfDate(later[i]);
      double[] together = new double[prices];
      for (int p = 0; p < prices; p++) {
        double least =
            gains
                ? Math.max(0, loss) + FrontSoFar.PRICES[p] * before - gain[p][i] - after[p][date]
                : 0;
        together[p] = Math.max(least, FrontSoFar.PRICES[p] * (before + c.cost()));
      }
      long cost = prunings.contains(Pruning.COST) ? leastCents(before + c.cost()) : 0;
      int level = front.leastLevel(cost, leastCents(together[0]), together);
      out.add(new Child(i, level, together[3]));
    }
    out.sort(Comparator.comparingDouble(Child::together).thenComparingInt(Child::place));
    return out;
  }

  /** Cents that an amount comes to at least, rounded as it is. */
  private static long leastCents(double dollars) {
    return Money.ofDollars(dollars - HALF_A_CENT_LESS / 100).cents();
  }

  /**
   * Takes a program into the front where it belongs; the worst site is looked for until it cannot.
   */
  private void consider(Prefix prefix, Score score) {
    long cost = leastCents(candidates.made().cost() + prefix.cost());
    long loss = Money.ofDollars(score.lossDollarsPerAcre()).cents();
    double weakest = weakest(score);
    if (front.beats(cost, loss, Front.levelOf(weakest)) || !evaluator.legal(prefix.draft())) {
      return;
    }
    TreeSet<Site> sites = new TreeSet<>();
    prefix
        .prepared()
        .forEach(p -> p.effect().actives().forEach(a -> sites.add(a.ingredient().site())));
    List<Site> inTurn = new ArrayList<>(hardest);
    inTurn.retainAll(sites);
    sites.removeAll(inTurn);
    inTurn.addAll(sites);
    for (Site site : inTurn) {
      scored++;
      double without = weakest(kernel.score(prefix.prepared(), site));
      if (without < weakest) {
        weakest = without;
        if (front.beats(cost, loss, Front.levelOf(weakest))) {
          // What decides here mostly decides next time too.
          hardest.remove(site);
          hardest.add(0, site);
          return;
        }
      }
    }
    Walked walked = evaluator.full(prefix.draft());
    if (walked.lacking() == 0) {
      front.add(walked);
    }
  }

  private double weakest(Score score) {
    double out = 100;
    for (int w : candidates.drivers()) {
      out = Math.min(out, score.controlPct(w));
    }
    return out;
  }
}
