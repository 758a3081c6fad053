package org.swathbook.plan.draft;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.swathbook.book.Book;
import org.swathbook.catalog.IngredientId;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.check.SeasonSoFar;
import org.swathbook.measure.Money;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.rules.TankOffers;
import org.swathbook.season.Kernel;
import org.swathbook.season.PreparedPass;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonSums;

/**
 * Scores drafts of one field with the kernel that every other command walks too. Confined to one
 * thread; of many drafts at once it has other threads help, each draft by itself, so that all come
 * to the same whoever does it.
 */
public final class FieldEvaluator implements Evaluator {
  /** Fewer scores take no longer than it takes another thread to wake up. */
  private static final int WORTH_SHARING = 8;

  private final Book book;
  private final PlanSpace space;
  private final Legality legality;
  private final Kernel kernel;
  private final TankOffers offers;
  private final Sequences sequences;
  private final PlanWishes wishes;
  private final List<Pass> made;
  private final List<PreparedPass> facts = new ArrayList<>();
  private final Map<Stop, PreparedPass> prepared = new ConcurrentHashMap<>();
  private final Map<Draft, QuickScore> quick = new HashMap<>();
  private final Map<Draft, Double> goal = new HashMap<>();
  private final SettledMisses settled;
  private final Map<Draft, Boolean> legal = new HashMap<>();

  public FieldEvaluator(Book book, Kernel kernel, PlanSpace space, Legality legality) {
    this(book, kernel, space, legality, PlanWishes.NONE, List.of());
  }

  /**
   * @param made passes that the journal has of the season; every draft comes after them
   */
  public FieldEvaluator(
      Book book,
      Kernel kernel,
      PlanSpace space,
      Legality legality,
      PlanWishes wishes,
      List<Pass> made) {
    this.wishes = wishes;
    this.made = List.copyOf(made);
    this.book = book;
    this.space = space;
    this.legality = legality;
    this.kernel = kernel;
    this.offers = new TankOffers(book, kernel.traces());
    this.sequences = new Sequences(space.options(), d -> legality.allows(d, space));
    for (Pass p : made) {
      facts.add(kernel.made(p.mix(), SeasonSoFar.dateOf(p)));
    }
    this.settled = new SettledMisses(kernel, book.house(), offers, facts, this::prepare);
  }

  public Kernel kernel() {
    return kernel;
  }

  /** What one tank can bring on the field. */
  public TankOffers offers() {
    return offers;
  }

  /** Drafts scored so far. */
  public int scored() {
    return quick.size();
  }

  @Override
  public double quick(Draft draft) {
    return quickly(draft).net();
  }

  @Override
  public double quickGoal(Draft draft) {
    return quickly(draft).goal();
  }

  @Override
  public double goal(Draft draft) {
    return goal.computeIfAbsent(draft, d -> quickGoal(d) - Goal.fine(settled.of(d)));
  }

  @Override
  public void expect(List<Draft> drafts) {
    List<Draft> fresh = drafts.stream().filter(d -> !quick.containsKey(d)).distinct().toList();
    if (fresh.size() < WORTH_SHARING) {
      return;
    }
    List<QuickScore> scores = fresh.parallelStream().map(this::score).toList();
    for (int i = 0; i < scores.size(); i++) {
      quick.put(fresh.get(i), scores.get(i));
    }
  }

  private QuickScore quickly(Draft draft) {
    return quick.computeIfAbsent(draft, this::score);
  }

  private QuickScore score(Draft draft) {
    List<PreparedPass> passes = passes(draft);
    long[] cents = new long[passes.size()];
    for (int i = 0; i < facts.size(); i++) {
      cents[i] = known(facts.get(i).mix());
    }
    for (int i = facts.size(); i < cents.length; i++) {
      for (int o : draft.stops().get(i - facts.size()).options()) {
        cents[i] += space.option(o).cost().cents();
      }
    }
    return QuickScore.of(book, kernel, passes, cents).less(Goal.PER_WISH * lacking(draft));
  }

  /** Those made, then those of the draft. */
  private List<PreparedPass> passes(Draft draft) {
    List<PreparedPass> out = new ArrayList<>(facts);
    for (Stop s : draft.stops()) {
      out.add(prepare(s));
    }
    return out;
  }

  /** What was sprayed without a price is the same in every draft, and counts as nothing here. */
  private long known(Mix mix) {
    return mix.doses().stream()
        .mapToLong(d -> book.prices().perAcre(d).orElse(Money.ZERO).cents())
        .sum();
  }

  private int lacking(Draft draft) {
    if (wishes.include().isEmpty()) {
      return 0;
    }
    Set<IngredientId> used = new TreeSet<>(space.actives(draft));
    made.forEach(p -> p.mix().actives().forEach(a -> used.add(a.ingredient().id())));
    return wishes.missing(used);
  }

  /** Passes that every draft comes after. */
  public PassesMade passesMade() {
    long cents = 0;
    boolean priced = true;
    for (PreparedPass p : facts) {
      cents += known(p.mix()) + book.passCost().cents();
      priced &= book.prices().perAcre(p.mix()).isPresent();
    }
    return new PassesMade(facts, cents / 100.0, priced);
  }

  /** A pass on its date, made once for all drafts that hold it. */
  public PreparedPass prepare(Stop stop) {
    return prepared.computeIfAbsent(
        stop, s -> kernel.prepare(space.mix(s), space.grid().date(s.date())));
  }

  @Override
  public boolean legal(Draft draft) {
    return legal.computeIfAbsent(draft, d -> liesApart(d) && isAffordable(d) && follow(d));
  }

  /** Whether no pass comes nearer to another, or to one made, than the house lets it. */
  private boolean liesApart(Draft draft) {
    Draft before = Draft.EMPTY;
    for (Stop stop : draft.stops()) {
      LocalDate date = space.grid().date(stop.date());
      if (!space.hasRoom(before, stop.date())
          || facts.stream().anyMatch(p -> !book.house().areApart(date, p.planned()))) {
        return false;
      }
      before = new Draft(List.of(stop));
    }
    return true;
  }

  /**
   * A pass just made may stand for a planned one, so that then a draft is asked about as a whole.
   */
  private boolean follow(Draft draft) {
    return made.isEmpty() ? sequences.allow(draft) : legality.allows(draft, space);
  }

  /** Every pass made, adjuvants aside, which have no price. */
  private boolean isAffordable(Draft draft) {
    if (wishes.budgetPerAcre().isEmpty()) {
      return true;
    }
    long cents = (facts.size() + draft.stops().size()) * book.passCost().cents();
    for (PreparedPass p : facts) {
      cents += known(p.mix());
    }
    for (Stop stop : draft.stops()) {
      for (int o : stop.options()) {
        cents += space.option(o).cost().cents();
      }
    }
    return cents <= wishes.budgetPerAcre().get().cents();
  }

  @Override
  public Walked full(Draft draft) {
    List<PreparedPass> passes = passes(draft);
    // What is made may lie on the day of a pass to come, and comes first then.
    passes.sort(Comparator.comparing(PreparedPass::planned));
    SeasonSums outcome = SeasonWalk.sums(book, kernel, passes);
    return new Walked(
        draft,
        outcome,
        HouseRuleCheck.broken(book, offers, outcome),
        lacking(draft),
        outcome.cost().orElseGet(() -> knownCost(outcome)));
  }

  @Override
  public List<Walked> full(List<Draft> drafts) {
    return drafts.parallelStream().map(this::full).toList();
  }

  private Money knownCost(SeasonSums outcome) {
    long cents = 0;
    int years = outcome.years();
    for (PassOutcome p : outcome.passes()) {
      cents += (known(p.mix()) + book.passCost().cents()) * (years - p.missedYears().size());
    }
    return new Money(Math.floorDiv(2 * cents + years, 2L * years));
  }
}
