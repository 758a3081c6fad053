package org.swathbook.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.HouseRules;
import org.swathbook.season.Kernel;
import org.swathbook.season.Loads;
import org.swathbook.season.PreparedPass;
import org.swathbook.season.Score;
import org.swathbook.season.Standing;

/**
 * Finds, of all programs that can be made of some candidate passes, the one with the highest net
 * return that meets the house rules, and proves that none is better. Money is dollars on an acre.
 */
final class ExactSearch implements BranchAndBound.Problem<ExactSearch.Node> {
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

  /**
   * @param best highest net return that meets the house rules; empty when none of the programs does
   * @param exact whether that is proved; not when there were more programs to score than allowed
   * @param scored how many programs were scored
   */
  record Result(Optional<Walked> best, boolean exact, long scored) {}

  /** First passes with their score, and what stands on the later dates as far as it was asked. */
  static final class Node {
    private final Prefix prefix;
    private final Score score;
    private final @Nullable Standing[] standing;

    private Node(Prefix prefix, Score score, int dates) {
      this.prefix = prefix;
      this.score = score;
      this.standing = new @Nullable Standing[dates];
    }
  }

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
    BranchAndBound<Node> search = new BranchAndBound<>(this, prunings, mostScored);
    search.run(node(Prefix.EMPTY));
    return new Result(Optional.ofNullable(best), search.complete(), search.scored());
  }

  private Node node(Prefix prefix) {
    return new Node(prefix, kernel.score(prefix.prepared()), candidates.dates());
  }

  @Override
  public int maxPasses() {
    return maxPasses;
  }

  @Override
  public int candidates() {
    return candidates.size();
  }

  @Override
  public int dates() {
    return candidates.dates();
  }

  @Override
  public int placeOfDate(int candidate) {
    return candidates.placeOfDate(candidate);
  }

  @Override
  public double cost(int candidate) {
    return candidates.get(candidate).cost();
  }

  @Override
  public int passes(Node node) {
    return node.prefix.size();
  }

  @Override
  public int firstAfter(Node node) {
    return candidates.firstAfter(node.prefix.lastDate());
  }

  @Override
  public double net(Node node) {
    return node.score.weedFreeDollarsPerAcre()
        - node.score.lossDollarsPerAcre()
        - node.prefix.cost();
  }

  @Override
  public double netWithoutLoss(Node node) {
    return node.score.weedFreeDollarsPerAcre() - node.prefix.cost();
  }

  @Override
  public BranchAndBound.Savings savings(Node node, int[] some) {
    double loss = node.score.lossDollarsPerAcre();
    Loads loads = kernel.loads(node.prefix.prepared());
    double[] most = new double[some.length];
    for (int i = 0; i < most.length; i++) {
      most[i] = Math.min(loss, candidates.gains().mostSaved(some[i], loads));
    }
    return new BranchAndBound.Savings(loss, most);
  }

  @Override
  public boolean isLegal(Node node) {
    return evaluator.legal(node.prefix.draft());
  }

  @Override
  public boolean allows(Node node, int candidate) {
    Candidate next = candidates.get(candidate);
    int date = candidates.placeOfDate(candidate);
    Standing standing = node.standing[date];
    if (standing == null) {
      standing = Standing.of(kernel, node.prefix.prepared(), next.pass());
      node.standing[date] = standing;
    }
    return prefixRules.allow(node.prefix, next, standing);
  }

  @Override
  public Node then(Node node, int candidate) {
    return node(node.prefix.then(candidates.get(candidate)));
  }

  @Override
  public void consider(Node node) {
    List<PreparedPass> passes = node.prefix.prepared();
    Draft draft = node.prefix.draft();
    if (!seasonRules.allow(passes, node.score) || !evaluator.legal(draft)) {
      return;
    }
    Walked walked = evaluator.full(draft);
    if (walked.meetsHouseRules() && (best == null || Goal.BEST.compare(walked, best) < 0)) {
      best = walked;
    }
  }

  @Override
  public double toBeat() {
    return best == null ? Double.NEGATIVE_INFINITY : best.net().dollars();
  }

  @Override
  public double rounding() {
    return ROUNDING;
  }
}
