package org.swathbook.plan.exact;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.HouseRules;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.plan.draft.Delay;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Evaluator;
import org.swathbook.plan.draft.Walked;
import org.swathbook.season.ControlBounds;
import org.swathbook.season.Kernel;
import org.swathbook.season.Loads;
import org.swathbook.season.PreparedPass;
import org.swathbook.season.Score;
import org.swathbook.season.Standing;

/**
 * Finds, of all programs that can be made of some candidate passes, the best one, and proves that
 * none is better. Money is dollars on an acre.
 */
public final class ExactSearch implements BranchAndBound.Problem<ExactSearch.Node> {
  /** More than all rounding to cents, dollars on an acre. */
  private static final double ROUNDING = 0.02;

  private final Aim aim;
  private final Candidates candidates;
  private final Candidates late;
  private final Evaluator evaluator;
  private final Delay delay;
  private final Comparator<Walked> order;
  private final Kernel kernel;
  private final PrefixRules prefixRules;
  private final SeasonRules seasonRules;
  private final SeasonAhead seasonAhead;
  private final @Nullable ControlBounds control;
  private final int maxPasses;
  private final Set<Pruning> prunings;
  private final long mostScored;

  private @Nullable Walked best;
  private double bestWorth = Double.NEGATIVE_INFINITY;

  /**
   * @param best the best program; empty when none of those seen is what is looked for
   * @param exact whether that is proved; not when there were more programs to score than allowed
   * @param mostLeft what a program that was not seen is worth at most, dollars on an acre: minus
   *     infinity when exact
   * @param scored how many programs were scored
   */
  public record Result(Optional<Walked> best, boolean exact, double mostLeft, long scored) {}

  /**
   * First passes with what they score and break, and what stands on the later dates and would be
   * broken with one more pass, as far as it was asked.
   */
  static final class Node {
    private final Prefix prefix;
    private final Score score;
    private final Prefix paid;
    private final Score paidScore;
    private final @Nullable Loads loads;
    private final Breach broken;
    private final @Nullable Standing[] standing;

    private final boolean[] asked;
    private final @Nullable Breach[] after;
    private @Nullable ControlAhead ahead;

    private Node(
        Prefix prefix,
        Score score,
        Prefix paid,
        Score paidScore,
        @Nullable Loads loads,
        Breach broken,
        Candidates candidates) {
      this.prefix = prefix;
      this.score = score;
      this.paid = paid;
      this.paidScore = paidScore;
      this.loads = loads;
      this.broken = broken;
      this.standing = new @Nullable Standing[candidates.dates()];
      this.asked = new boolean[candidates.size()];
      this.after = new @Nullable Breach[candidates.size()];
    }
  }

  /**
   * @param delay what comes when every pass is late
   */
  public ExactSearch(
      Aim aim,
      Candidates candidates,
      HouseRules house,
      int maxPasses,
      Evaluator evaluator,
      Delay delay,
      Set<Pruning> prunings,
      long mostScored) {
    this.aim = aim;
    this.candidates = candidates;
    this.late = aim.worth() == Aim.Worth.NET_WHEN_LATE ? candidates.late(delay) : candidates;
    this.evaluator = evaluator;
    this.delay = delay;
    this.order = aim.order(delay);
    this.kernel = candidates.kernel();
    this.prefixRules = new PrefixRules(candidates, house, aim.mayBreak());
    this.seasonRules = new SeasonRules(candidates, house, aim.mayBreak());
    this.seasonAhead = new SeasonAhead(candidates, house, aim.mayBreak());
    boolean mayBreakAll = !aim.lightestFirst() && aim.mayBreak().containsAll(HouseRuleCheck.NAMES);
    this.control = mayBreakAll || !prunings.contains(Pruning.CONTROL) ? null : candidates.control();
    this.maxPasses = maxPasses;
    this.prunings = EnumSet.noneOf(Pruning.class);
    this.prunings.addAll(prunings);
    if (late.dates() < candidates.dates()) {
      // Late passes meet on the last day of the grid; gains are bounded for one pass on a day.
      this.prunings.remove(Pruning.GAIN);
    }
    this.mostScored = mostScored;
  }

  /**
   * @param known a program to be beaten, made of the candidates or not
   */
  public Result run(Optional<Walked> known) {
    known.filter(aim::allows).ifPresent(this::keep);
    BranchAndBound<Node> search = new BranchAndBound<>(this, prunings, mostScored);
    Node start = node(candidates.start(), late.start(), prefixRules.atStart(candidates.start()));
    if (!candidates.made().passes().isEmpty()) {
      consider(start);
    }
    search.run(start);
    return new Result(
        Optional.ofNullable(best),
        search.complete(),
        search.mostLeft() + ROUNDING,
        search.scored());
  }

  private Node node(Prefix prefix, Prefix paid, Breach broken) {
    // A program that may grow is asked for its loads at once: they come with its score.
    boolean grows = countsLoss() && prunings.contains(Pruning.GAIN) && prefix.size() < maxPasses;
    Loads loads = grows ? kernel.loads(paid.prepared()) : null;
    Score paidScore = loads == null ? kernel.score(paid.prepared()) : loads.score();
    Score score =
        aim.worth() != Aim.Worth.NET_WHEN_LATE ? paidScore : kernel.score(prefix.prepared());
    return new Node(prefix, score, paid, paidScore, loads, broken, candidates);
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
    return late.get(candidate).cost();
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
    return netWithoutLoss(node) - (countsLoss() ? node.paidScore.lossDollarsPerAcre() : 0);
  }

  @Override
  public double netWithoutLoss(Node node) {
    boolean earns = countsLoss() && candidates.made().priced();
    return (earns ? node.paidScore.weedFreeDollarsPerAcre() : 0)
        - node.paid.cost()
        - candidates.made().cost();
  }

  private boolean countsLoss() {
    return aim.worth() != Aim.Worth.COST;
  }

  @Override
  public BranchAndBound.Savings savings(Node node, int[] some) {
    double[] most = new double[some.length];
    if (!countsLoss()) {
      return new BranchAndBound.Savings(0, most);
    }
    double loss = node.paidScore.lossDollarsPerAcre();
    Loads loads = node.loads == null ? kernel.loads(node.paid.prepared()) : node.loads;
    for (int i = 0; i < most.length; i++) {
      most[i] = Math.min(loss, late.gains().mostSaved(some[i], loads));
    }
    return new BranchAndBound.Savings(loss, most);
  }

  @Override
  public boolean isLegal(Node node) {
    return evaluator.legal(node.prefix.draft());
  }

  @Override
  public boolean allows(Node node, int candidate) {
    return broken(node, candidate) != null;
  }

  private @Nullable Breach broken(Node node, int candidate) {
    if (!node.asked[candidate]) {
      node.asked[candidate] = true;
      node.after[candidate] = ask(node, candidate);
    }
    return node.after[candidate];
  }

  private @Nullable Breach ask(Node node, int candidate) {
    Candidate next = candidates.get(candidate);
    int date = candidates.placeOfDate(candidate);
    return prefixRules.after(
        node.prefix, node.broken, next, () -> standing(node, date, next.pass()));
  }

  private Standing standing(Node node, int date, PreparedPass next) {
    Standing standing = node.standing[date];
    if (standing == null) {
      standing = Standing.of(kernel, node.prefix.prepared(), next, candidates.drivers());
      node.standing[date] = standing;
    }
    return standing;
  }

  @Override
  public Node then(Node node, int candidate) {
    Breach broken = node.broken;
    if (aim.lightestFirst()) {
      Breach after = broken(node, candidate);
      broken = after == null ? node.broken : after;
    }
    return node(
        node.prefix.then(candidates.get(candidate)), node.paid.then(late.get(candidate)), broken);
  }

  @Override
  public void consider(Node node) {
    Breach broken = seasonRules.of(node.broken, node.score);
    if (broken == null || net(node) + ROUNDING < toBeat(broken)) {
      return;
    }
    Draft draft = node.prefix.draft();
    if (!evaluator.legal(draft)
        || !seasonRules.holdsWithoutAnyOneSite(node.prefix.prepared(), node.score)) {
      return;
    }
    Walked walked = evaluator.full(draft);
    if (aim.allows(walked) && (best == null || order.compare(walked, best) < 0)) {
      keep(walked);
    }
  }

  private void keep(Walked walked) {
    best = walked;
    bestWorth =
        switch (aim.worth()) {
          case NET -> walked.net().dollars();
          case COST -> -walked.cost().dollars();
          case NET_WHEN_LATE -> delay.net(walked).dollars();
        };
  }

  @Override
  public double toBeat(Node node) {
    return toBeat(node.broken);
  }

  private double toBeat(Breach broken) {
    if (best == null || !aim.lightestFirst()) {
      return bestWorth;
    }
    int more = Integer.compare(broken.rules().size(), best.brokenRules());
    if (more == 0) {
      more = Integer.compare(broken.steps(), (int) best.deficit());
    }
    return more == 0 ? bestWorth : more < 0 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
  }

  @Override
  public double toBeat(Node node, int candidate) {
    if (control == null) {
      return toBeat(node);
    }
    Breach broken = prunings.contains(Pruning.HOUSE_RULES) ? broken(node, candidate) : node.broken;
    if (broken == null) {
      return Double.POSITIVE_INFINITY;
    }
    int first = firstAfter(node);
    ControlAhead ahead = node.ahead;
    if (ahead == null) {
      int[] next = new int[candidates.size() - first];
      Arrays.setAll(next, i -> first + i);
      ahead =
          new ControlAhead(control, candidates, node.prefix, next, maxPasses - node.prefix.size());
      node.ahead = ahead;
    }
    Candidate next = candidates.get(candidate);
    Prefix longer = node.prefix.then(next);
    boolean further =
        longer.size() < maxPasses && candidates.firstAfter(next.date()) < candidates.size();
    Breach sure = seasonAhead.atLeast(broken, ahead, candidate - first, longer.prepared(), further);
    return sure == null ? Double.POSITIVE_INFINITY : toBeat(sure);
  }

  /** Of costs alone every beginning promises most. */
  @Override
  public boolean tellsApart() {
    return countsLoss();
  }

  @Override
  public double rounding() {
    return ROUNDING;
  }
}
