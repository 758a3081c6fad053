package org.swathbook.plan.exact;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The planner's own branch and bound on a linear plan. What is left of a need costs a price by weed
 * ({@link LinearPrices}), as plants left cost yield in a field.
 */
final class LinearSearch implements BranchAndBound.Problem<LinearSearch.Node> {
  /** Steps to better prices before a program is known, then with one to beat, then at each node. */
  private static final int FIRST_STEPS = 10;

  private static final int SECOND_STEPS = 20;

  private static final int STEPS = 4;

  /** Cents a millionth to begin with: a plant in e gone is worth ten dollars. */
  private static final double FIRST_PRICE = 1e-3;

  private final LinearTanks tanks;
  private final LinearPlan plan;
  private final int[] firstAfterDate;

  /** Of the best program; before one is known a cent more than any program can cost. */
  private int bestCents;

  private int @Nullable [] best;

  /** First tanks, what they cost and what they leave of each need, with prices for it. */
  static final class Node {
    private final int[] tanks;
    private final int cents;
    private final int[] left;
    private LinearPrices.Prices prices;

    private Node(int[] tanks, int cents, int[] left, LinearPrices.Prices prices) {
      this.tanks = tanks;
      this.cents = cents;
      this.left = left;
      this.prices = prices;
    }
  }

  /**
   * @param cents cost of the cheapest program; empty when none meets the needs
   * @param tanks its tanks by date
   */
  @SuppressWarnings("ArrayRecordComponent")
  record Result(OptionalInt cents, Optional<int[]> tanks, long scored, int candidates) {}

  private LinearSearch(LinearTanks tanks) {
    this.tanks = tanks;
    this.plan = tanks.plan;
    this.bestCents = 1 + plan.maxPasses() * Arrays.stream(tanks.cents).max().orElse(0);
    this.firstAfterDate = new int[plan.dates() + 1];
    for (int d = 0; d <= plan.dates(); d++) {
      int c = 0;
      while (c < tanks.size() && tanks.date[c] < d) {
        c++;
      }
      firstAfterDate[d] = c;
    }
  }

  /** The cheapest program that meets all needs, proved. */
  static Result cheapest(LinearPlan plan, Set<Pruning> prunings) {
    LinearTanks tanks = new LinearTanks(plan);
    LinearSearch problem = new LinearSearch(tanks);
    int[] all = new int[tanks.size()];
    Arrays.setAll(all, c -> c);
    double[] first = new double[plan.weeds()];
    Arrays.fill(first, FIRST_PRICE);
    Node start = new Node(new int[0], 0, plan.need(), new LinearPrices.Prices(first, 0, all));
    start.prices = problem.raise(start, all, FIRST_STEPS);
    problem.beat(LinearClimb.top(tanks, start.prices.centsPerUnit()));
    start.prices = problem.raise(start, start.prices.candidates(), SECOND_STEPS);
    BranchAndBound<Node> search = new BranchAndBound<>(problem, prunings, Long.MAX_VALUE);
    search.run(start);
    return new Result(
        problem.best == null ? OptionalInt.empty() : OptionalInt.of(problem.bestCents),
        Optional.ofNullable(problem.best),
        search.scored(),
        tanks.size());
  }

  private void beat(int[] known) {
    if (tanks.meets(known)) {
      best = known;
      bestCents = tanks.cents(known);
    }
  }

  @Override
  public int maxPasses() {
    return plan.maxPasses();
  }

  @Override
  public int candidates() {
    return tanks.size();
  }

  @Override
  public int dates() {
    return plan.dates();
  }

  @Override
  public int placeOfDate(int candidate) {
    return tanks.date[candidate];
  }

  @Override
  public double cost(int candidate) {
    return tanks.cents[candidate];
  }

  @Override
  public int passes(Node node) {
    return node.tanks.length;
  }

  @Override
  public int firstAfter(Node node) {
    int n = node.tanks.length;
    return n == 0 ? 0 : firstAfterDate[tanks.date[node.tanks[n - 1]] + 1];
  }

  @Override
  public double net(Node node) {
    for (int left : node.left) {
      if (left > 0) {
        return Double.NEGATIVE_INFINITY;
      }
    }
    return -node.cents;
  }

  @Override
  public double netWithoutLoss(Node node) {
    return -node.cents;
  }

  @Override
  public BranchAndBound.Savings savings(Node node, int[] candidates) {
    if (node.tanks.length == plan.maxPasses() - 1) {
      return lastSavings(node, candidates);
    }
    if (node.tanks.length > 0) {
      int[] legal = tanks.legalAfter(node.tanks, candidates);
      node.prices = raise(node, legal, STEPS);
    }
    // A tank that is against a cap now stays so, whatever else comes.
    int[] worthwhile = node.prices.candidates();
    double[] most = new double[candidates.length];
    Arrays.fill(most, Double.NEGATIVE_INFINITY);
    for (int i = 0, at = 0; at < worthwhile.length; i++) {
      if (candidates[i] == worthwhile[at]) {
        most[i] = tanks.saved(worthwhile[at++], node.left, node.prices.centsPerUnit());
      }
    }
    return new BranchAndBound.Savings(loss(node), most);
  }

  /** The last tank leaves nothing, or it is of no use at all. */
  private BranchAndBound.Savings lastSavings(Node node, int[] candidates) {
    double loss = loss(node);
    double[] most = new double[candidates.length];
    for (int i = 0; i < most.length; i++) {
      most[i] = tanks.meets(candidates[i], node.left) ? loss : Double.NEGATIVE_INFINITY;
    }
    return new BranchAndBound.Savings(loss, most);
  }

  private static double loss(Node node) {
    double loss = 0;
    for (int w = 0; w < node.left.length; w++) {
      loss += node.prices.centsPerUnit()[w] * node.left[w];
    }
    return loss;
  }

  /** Better prices of what some tanks leave, and later ones with which they may win. */
  private LinearPrices.Prices raise(Node node, int[] later, int steps) {
    return LinearPrices.raise(
        tanks,
        node.left,
        later,
        plan.maxPasses() - node.tanks.length,
        node.prices.centsPerUnit(),
        steps,
        // Only a program that is cheaper by a cent is of interest.
        bestCents - node.cents - 1 + 2e-6);
  }

  @Override
  public boolean isLegal(Node node) {
    return tanks.areLegal(node.tanks);
  }

  @Override
  public boolean allows(Node node, int candidate) {
    return true;
  }

  @Override
  public Node then(Node node, int candidate) {
    int n = node.tanks.length;
    int[] longer = Arrays.copyOf(node.tanks, n + 1);
    longer[n] = candidate;
    int[] left = node.left.clone();
    for (int w = 0; w < left.length; w++) {
      left[w] = Math.max(0, left[w] - tanks.kill(candidate, w));
    }
    return new Node(longer, node.cents + tanks.cents[candidate], left, node.prices);
  }

  @Override
  public void consider(Node node) {
    if (node.cents < bestCents && tanks.meets(node.tanks) && isLegal(node)) {
      bestCents = node.cents;
      best = node.tanks;
    }
  }

  @Override
  public double toBeat(Node node) {
    return -bestCents;
  }

  /** Only a program that is cheaper by a cent is of interest. */
  @Override
  public double rounding() {
    return -1 + 1e-6;
  }
}
