package org.swathbook.plan.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;

/**
 * Goes through all programs that can be made of some candidate passes: depth first by date, the
 * most promising pass first, leaving out what cannot win (branch and bound; Land & Doig 1960,
 * Econometrica 28: 497-520, from memory). Where that takes too long it goes on from what promises
 * most, so that what is left unseen promises as little as can be. What a program is worth and what
 * it may hold is the problem's affair.
 *
 * @param <N> the first passes of a program, with all that is known of them
 */
final class BranchAndBound<N> {

  /**
   * Candidate passes in the order of their dates, at most one on a date, and what programs made of
   * them are worth. What a program brings is counted in one unit of money.
   *
   * @param <N> the first passes of a program
   */
  interface Problem<N> {
    int maxPasses();

    int candidates();

    int dates();

    /** Place of a candidate's date among the dates. */
    int placeOfDate(int candidate);

    double cost(int candidate);

    int passes(N node);

    /** First candidate whose date is later than all of these; their number when there is none. */
    int firstAfter(N node);

    /** What the program brings if nothing follows; minus infinity when it is none yet. */
    double net(N node);

    /** What it would bring if no loss were left: what no pass after these can top. */
    double netWithoutLoss(N node);

    /** What candidates can save at most after these passes. */
    Savings savings(N node, int[] candidates);

    /** Whether caps, counts and intervals let these passes follow each other. */
    boolean isLegal(N node);

    /** Whether one more pass breaks nothing that later ones cannot mend. */
    boolean allows(N node, int candidate);

    N then(N node, int candidate);

    /** Keeps the program as the best when it is a whole one and better. */
    void consider(N node);

    /**
     * What a program that begins with these passes has to bring to be the best; minus infinity when
     * any would be, plus infinity when none can.
     */
    double toBeat(N node);

    /** The same when these passes go on with a candidate that they allow. */
    default double toBeat(N node, int candidate) {
      return toBeat(node);
    }

    /** Whether bounds tell the promising apart, so that it pays to look at these first. */
    default boolean tellsApart() {
      return true;
    }

    /** By how much what is computed may fall short of what counts. */
    double rounding();
  }

  /** What later passes may still save. */
  static final class Savings {
    private final double loss;
    private final double[] most;

    /**
     * @param loss what all of them together can save at most, their cost aside
     * @param most what each of the candidates can save at most, its cost aside; the sum over
     *     several bounds what they save together
     */
    Savings(double loss, double[] most) {
      this.loss = loss;
      this.most = most;
    }
  }

  private final Problem<N> problem;
  private final Set<Pruning> prunings;
  private final long mostScored;

  /** Places in the tree that were left when the search in depth was given up. */
  private final PriorityQueue<Branch<N>> left = new PriorityQueue<>();

  private long scored;
  private long branches;

  /**
   * @param mostScored programs to score before it gives up
   */
  BranchAndBound(Problem<N> problem, Set<Pruning> prunings, long mostScored) {
    this.problem = problem;
    this.prunings = prunings;
    this.mostScored = mostScored;
  }

  /** Goes through all programs that begin with these passes; that of no more is not considered. */
  void run(N start) {
    int[] all = new int[problem.candidates()];
    Arrays.setAll(all, c -> c);
    extend(start, all);
    widen();
  }

  /** Whether nothing was left out that could win. */
  boolean complete() {
    return left.isEmpty();
  }

  /**
   * What a program that was left out unseen brings at most; minus infinity when {@link #complete()}
   * is true.
   */
  double mostLeft() {
    Branch<N> most = left.peek();
    return most == null ? Double.NEGATIVE_INFINITY : most.child().most();
  }

  /** How many programs were scored. */
  long scored() {
    return scored;
  }

  /** A pass that may come next, and the most that any program brings that goes on with it. */
  private record Child(int candidate, double most) {}

  /**
   * Passes that one more may follow.
   *
   * @param ahead what may follow them, the one with them
   * @param number in the order in which they were left
   */
  private record Branch<N>(N node, Ahead ahead, Child child, long number)
      implements Comparable<Branch<N>> {

    /** The most promising first. */
    @Override
    public int compareTo(Branch<N> other) {
      int more = Double.compare(other.child.most, child.most);
      return more != 0 ? more : Long.compare(number, other.number);
    }
  }

  private void extend(N node, int[] open) {
    Ahead ahead = further(node, open);
    for (Child child : ahead.children) {
      if (isHopeless(node, child.most())) {
        // The most promising comes first: none of the others brings more.
        return;
      }
      if (scored >= mostInDepth()) {
        left.add(new Branch<>(node, ahead, child, branches++));
      } else if (mayWin(node, child)) {
        extend(follow(node, child), ahead.open);
      }
    }
  }

  /** Half of the programs: what is left is better told by looking where most is promised. */
  private long mostInDepth() {
    return problem.tellsApart() ? mostScored - mostScored / 2 : mostScored;
  }

  /** Goes on where most is promised, until nothing is left or as many as allowed are scored. */
  private void widen() {
    for (Branch<N> b = left.peek(); b != null; b = left.peek()) {
      boolean promises = !isHopeless(b.node, b.child.most()) && mayWin(b.node, b.child);
      if (promises && scored >= mostScored) {
        return;
      }
      left.poll();
      if (promises) {
        N longer = follow(b.node, b.child);
        Ahead ahead = further(longer, b.ahead.open);
        for (Child next : ahead.children) {
          left.add(new Branch<>(longer, ahead, next, branches++));
        }
      }
    }
  }

  private boolean mayWin(N node, Child child) {
    return !(prunings.contains(Pruning.HOUSE_RULES) && !problem.allows(node, child.candidate()))
        && !(prunings.contains(Pruning.CONTROL)
            && child.most() + problem.rounding() < problem.toBeat(node, child.candidate()));
  }

  private N follow(N node, Child child) {
    scored++;
    N longer = problem.then(node, child.candidate());
    if (!isHopeless(longer, problem.net(longer))) {
      problem.consider(longer);
    }
    return longer;
  }

  /** What may follow some passes. */
  private static final class Ahead {
    private static final Ahead NOTHING = new Ahead(List.of(), new int[0]);

    private final List<Child> children;
    private final int[] open;

    /**
     * @param children passes that may come next, the most promising first
     * @param open passes of which a program that goes on from here may win at all, in their order
     */
    Ahead(List<Child> children, int[] open) {
      this.children = children;
      this.open = open;
    }
  }

  /** What may follow them at all. */
  private Ahead further(N node, int[] open) {
    if (problem.passes(node) == problem.maxPasses()) {
      return Ahead.NOTHING;
    }
    Ahead ahead = ahead(node, open);
    return ahead.children.isEmpty() || prunings.contains(Pruning.SEQUENCE) && !problem.isLegal(node)
        ? Ahead.NOTHING
        : ahead;
  }

  private Ahead ahead(N node, int[] known) {
    int[] later =
        Arrays.copyOfRange(known, firstFrom(known, problem.firstAfter(node)), known.length);
    double atBest = problem.netWithoutLoss(node);
    boolean cost = prunings.contains(Pruning.COST);
    boolean gains = prunings.contains(Pruning.GAIN);
    if (cost && gains && isHopeless(node, atBest - cheapest(later))) {
      return Ahead.NOTHING;
    }
    double asItStands = atBest;
    double[] gain = new double[later.length];
    if (gains) {
      Savings savings = problem.savings(node, later);
      asItStands -= savings.loss;
      for (int i = 0; i < later.length; i++) {
        gain[i] = savings.most[i] - problem.cost(later[i]);
      }
    }
    BestDates dates =
        BestDates.of(problem, later, gain, problem.maxPasses() - problem.passes(node) - 1);
    List<Child> children = new ArrayList<>();
    int[] open = new int[later.length];
    int left = 0;
    for (int i = 0; i < later.length; i++) {
      int c = later[i];
      double alone = cost ? atBest - problem.cost(c) : Double.POSITIVE_INFINITY;
      int date = problem.placeOfDate(c);
      double within = gains ? Math.min(alone, asItStands + gain[i] + dates.beside(date)) : alone;
      if (isHopeless(node, within)) {
        continue;
      }
      open[left++] = c;
      double most = gains ? Math.min(alone, asItStands + gain[i] + dates.after(date)) : alone;
      if (!isHopeless(node, most)) {
        children.add(new Child(c, most));
      }
    }
    children.sort(
        Comparator.comparingDouble(Child::most).reversed().thenComparingInt(Child::candidate));
    return new Ahead(children, Arrays.copyOf(open, left));
  }

  private static int firstFrom(int[] candidates, int least) {
    int at = Arrays.binarySearch(candidates, least);
    return at < 0 ? -at - 1 : at;
  }

  private double cheapest(int[] candidates) {
    double out = Double.POSITIVE_INFINITY;
    for (int c : candidates) {
      out = Math.min(out, problem.cost(c));
    }
    return out;
  }

  private boolean isHopeless(N node, double most) {
    return most + problem.rounding() < problem.toBeat(node);
  }
}
