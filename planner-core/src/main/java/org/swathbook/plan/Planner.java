package org.swathbook.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.check.AddedSite;
import org.swathbook.check.FieldRefusal;
import org.swathbook.check.Judgement;
import org.swathbook.check.ProgramJudge;
import org.swathbook.check.SeasonSoFar;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Money;
import org.swathbook.plan.bound.Ceiling;
import org.swathbook.plan.choice.DateGrid;
import org.swathbook.plan.choice.OptionMaker;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.plan.choice.Strengths;
import org.swathbook.plan.climb.Mending;
import org.swathbook.plan.climb.Moves;
import org.swathbook.plan.climb.Starts;
import org.swathbook.plan.draft.Delay;
import org.swathbook.plan.draft.FieldEvaluator;
import org.swathbook.plan.draft.Legality;
import org.swathbook.plan.draft.PlanSpace;
import org.swathbook.plan.draft.Tanks;
import org.swathbook.plan.draft.Walked;
import org.swathbook.plan.exact.Front;
import org.swathbook.plan.exact.FrontProof;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.rules.Say;
import org.swathbook.rules.Verdict;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.SharedKernels;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * Plans a field: every legal dose on every date of the grid, a heuristic search over programs, and
 * the few programs that an adviser compares. Keeps only what all fields have in common; fields may
 * be planned at the same time on several threads.
 */
public final class Planner {
  private final Book book;
  private final PlanWishes wishes;
  private final Effort effort;
  private final SharedKernels shared;
  private final boolean ceiling;

  public Planner(Book book) {
    this(book, PlanWishes.NONE);
  }

  /** A planner that does as it is asked beside the house rules. */
  public Planner(Book book, PlanWishes wishes) {
    this(book, wishes, Effort.USUAL);
  }

  /** The same with more or less effort than usual. */
  public Planner(Book book, PlanWishes wishes, Effort effort) {
    this(book, wishes, effort, new SharedKernels(book.catalog()), false);
  }

  private Planner(
      Book book, PlanWishes wishes, Effort effort, SharedKernels shared, boolean ceiling) {
    this.book = book;
    this.wishes = wishes;
    this.effort = effort;
    this.shared = shared;
    this.ceiling = ceiling;
  }

  /**
   * The same, that also bounds all programs where all effort is spent; it takes seconds a field.
   */
  public Planner withCeiling() {
    return new Planner(book, wishes, effort, shared, true);
  }

  /**
   * @param today weather of the book's own season up to this day is real in every scenario
   */
  public FieldPlan plan(Field field, LocalDate today) {
    TraceSet traces = TraceBuilder.build(book, field, today);
    OptionMaker.Made made = OptionMaker.make(book, field);
    DateGrid grid = new DateGrid(field, book.house().dateStepDays());
    SeasonSoFar soFar = SeasonSoFar.of(book, field, today);
    int first = grid.firstFrom(soonest(today, soFar));
    FieldRefusal past = FieldRefusal.of(book, field);
    if (past.isRefused()) {
      return refused(traces, Refusal.ofField(past.findings()), made, grid);
    }
    Legality legality = new Legality(book, traces, grid);
    PlanSpace space =
        new PlanSpace(
            field,
            book.house(),
            grid,
            made.options(),
            (o, date) ->
                date >= first
                    && wishes.allows(o.dose())
                    && !soFar.isSameApplication(o.dose(), grid.date(date))
                    && legality.allows(o, date),
            legality::allows,
            Math.max(0, mostPasses() - soFar.made().size()));
    if (!space.anythingLegal() && soFar.isEmpty()) {
      if (first >= grid.size()) {
        return refused(traces, Refusal.ofField(List.of()), made.withLeftOut(allOver(today)), grid);
      }
      boolean otherwise =
          made.options().stream()
              .anyMatch(
                  o ->
                      IntStream.range(first, grid.size())
                          .anyMatch(date -> legality.allows(o, date)));
      Refusal why =
          otherwise ? Refusal.ofAsked(List.of()) : Refusal.ofField(legality.blocks(made.options()));
      return refused(traces, why, made, grid);
    }
    AskedActives actives = new AskedActives(book, traces, space, legality, made, first);
    Optional<Refusal> asked = actives.refusal(wishes, soFar);
    return asked.isPresent()
        ? refused(traces, asked.get(), made.withLeftOut(actives.remarks()), grid)
        : search(traces, space, legality, made, soFar, today);
  }

  /** The first day that the house lets come after what is made. */
  private LocalDate soonest(LocalDate today, SeasonSoFar soFar) {
    LocalDate out = today;
    for (Pass p : soFar.made()) {
      LocalDate after = SeasonSoFar.dateOf(p).plusDays(book.house().minDaysBetweenPasses());
      out = after.isAfter(out) ? after : out;
    }
    return out;
  }

  private int mostPasses() {
    return Math.min(book.house().maxPasses(), wishes.maxPasses().orElse(Integer.MAX_VALUE));
  }

  private static String allOver(LocalDate today) {
    return "every day of the season on which a pass can be planned: all are before today, "
        + Say.date(today);
  }

  private FieldPlan search(
      TraceSet traces,
      PlanSpace space,
      Legality legality,
      OptionMaker.Made made,
      SeasonSoFar soFar,
      LocalDate today) {
    Kernel kernel = Kernel.of(book, traces, shared);
    FieldEvaluator evaluator =
        new FieldEvaluator(book, kernel, space, legality, wishes, soFar.made());
    Strengths strengths = new Strengths(book, traces, space.options());
    Delay delay = new Delay(space, evaluator);
    int first = space.grid().firstFrom(soonest(today, soFar));
    List<Walked> affordable = List.of();
    int elsewhere = 0;
    if (wishes.budgetPerAcre().isPresent()) {
      FieldEvaluator any =
          new FieldEvaluator(book, kernel, space, legality, wishes.withAnyBudget(), soFar.made());
      ProgramHunt dear = hunt(space, any, strengths, first, List.of());
      affordable = dear.walked().stream().filter(w -> evaluator.legal(w.draft())).toList();
      if (affordable.size() == dear.walked().size()) {
        // A budget that binds nothing changes nothing.
        affordable = List.of();
      }
      elsewhere = any.scored() + (int) dear.scored();
    }
    ProgramHunt hunt = hunt(space, evaluator, strengths, first, affordable);
    Effort spent = hunt.spent();
    Combining.Result combined =
        Combining.of(
            book,
            space,
            evaluator,
            delay,
            hunt.walked(),
            hunt.around(spent.combined().around()),
            spent);
    hunt.add(combined.found());
    List<Walked> walked =
        hunt.walked().stream().filter(w -> w.hasPasses() && w.lacking() == 0).toList();
    Tanks tanks = new Tanks(book, traces, space, legality, soFar.made());
    Shown shown = named(evaluator.kernel(), space, tanks, walked, delay, today);
    List<PlannedProgram> programs = shown.programs();
    Proof proof = Proof.of(combined, shown.walked());
    SearchNote note =
        new SearchNote(
            spent,
            space.options().size(),
            space.grid().size(),
            elsewhere + evaluator.scored() + (int) (hunt.scored() + combined.scored()),
            combined.passes(),
            proof.exact(),
            proof.gap(),
            gapOfAll(space, evaluator, shown.walked(), spent),
            proof.proved(),
            combined.front().map(FrontProof::passes).orElse(0),
            made.leftOut());
    if (programs.isEmpty()) {
      return new FieldPlan(
          traces.field(),
          traces,
          Optional.of(
              wishes.equals(PlanWishes.NONE)
                  ? Refusal.ofField(legality.blocks(made.options()))
                  : Refusal.ofAsked(List.of())),
          List.of(),
          List.of(),
          List.of(),
          note);
    }
    Optional<Refusal> refusal =
        programs.get(0).recommended()
            ? Optional.empty()
            : Optional.of(
                new Refusal(
                    false,
                    List.of(),
                    programs.get(0).judgement().brokenHouseRules(),
                    Relaxations.of(walked),
                    combined.noHelp()));
    return new FieldPlan(
        traces.field(),
        traces,
        refusal,
        programs,
        WithoutPart.of(book, evaluator.kernel(), programs.get(0).outcome()),
        Front.of(walked).stream().map(FrontProgram::of).toList(),
        note);
  }

  private Optional<Money> gapOfAll(
      PlanSpace space, FieldEvaluator evaluator, Map<String, Walked> shown, Effort spent) {
    if (!ceiling || spent.ceilingRounds() == 0) {
      return Optional.empty();
    }
    return shown.values().stream()
        .findFirst()
        .map(
            first -> {
              double most = Ceiling.mostNet(book, space, evaluator, first, spent.ceilingRounds());
              return Proof.above(most, first);
            });
  }

  /**
   * @param walked the same by their names, as they were found
   */
  private record Shown(List<PlannedProgram> programs, Map<String, Walked> walked) {}

  /**
   * Looks for programs. Under a budget the way to a cheap one often leads over dearer ones, so that
   * it is looked for without the budget too.
   *
   * @param first first date on which anything can still be sprayed
   * @param known legal programs met elsewhere
   */
  private ProgramHunt hunt(
      PlanSpace space,
      FieldEvaluator evaluator,
      Strengths strengths,
      int first,
      List<Walked> known) {
    Moves moves = new Moves(space, evaluator);
    return ProgramHunt.of(
        book,
        space,
        evaluator,
        new Delay(space, evaluator),
        new Starts(space, strengths, book.house(), evaluator, first),
        moves,
        new Mending(space, strengths, book.house(), evaluator.offers(), moves),
        known,
        effort);
  }

  /** Names programs until every one of them is judged and none is blocked. */
  private Shown named(
      Kernel kernel,
      PlanSpace space,
      Tanks tanks,
      List<Walked> walked,
      Delay delay,
      LocalDate today) {
    List<Walked> left = new ArrayList<>(walked);
    while (true) {
      Map<String, Walked> chosen =
          Named.choose(left, space, 100 * book.house().oneSiteGone(), delay);
      List<PlannedProgram> out = new ArrayList<>();
      List<Walked> blocked = new ArrayList<>();
      for (Map.Entry<String, Walked> e : chosen.entrySet()) {
        Walked w = e.getValue();
        Program program = tanks.program(w.draft(), e.getKey());
        SeasonOutcome outcome = SeasonWalk.walk(book, kernel, program);
        Judgement judged = ProgramJudge.judge(book, kernel.traces(), outcome, today);
        if (judged.verdict() == Verdict.BLOCKED) {
          blocked.add(w);
          continue;
        }
        Judgement judgement = AddedSite.named(book, kernel, program, outcome, judged, today);
        Walked first = chosen.values().iterator().next();
        boolean best = out.isEmpty() && w.equals(first);
        out.add(
            new PlannedProgram(
                e.getKey(),
                best && w.meetsHouseRules(),
                outcome,
                judgement,
                best ? "" : givesUp(e.getKey(), first, w, delay)));
      }
      if (blocked.isEmpty()) {
        return new Shown(out, chosen);
      }
      left.removeAll(blocked);
    }
  }

  private static String givesUp(String name, Walked first, Walked other, Delay delay) {
    String now = GivesUp.against(first, other);
    return Named.isOfDelay(name)
        ? now
            + "; a week late it nets $"
            + delay.net(other)
            + ", the first program $"
            + delay.net(first)
        : now;
  }

  private FieldPlan refused(
      TraceSet traces, Refusal refusal, OptionMaker.Made made, DateGrid grid) {
    return new FieldPlan(
        traces.field(),
        traces,
        Optional.of(refusal),
        List.of(),
        List.of(),
        List.of(),
        new SearchNote(
            effort,
            made.options().size(),
            grid.size(),
            0,
            0,
            false,
            Optional.empty(),
            Optional.empty(),
            List.of(),
            0,
            made.leftOut()));
  }
}
