package org.swathbook.plan.keep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Book;
import org.swathbook.check.PairJudge;
import org.swathbook.check.SeasonSoFar;
import org.swathbook.check.UseJudge;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.Effort;
import org.swathbook.plan.FieldPlan;
import org.swathbook.plan.Planner;
import org.swathbook.plan.change.AddedTanks;
import org.swathbook.plan.change.ChangeMaker;
import org.swathbook.plan.change.ChangeTerms;
import org.swathbook.plan.change.LegalDoses;
import org.swathbook.plan.change.OwnWork;
import org.swathbook.plan.change.SingleChange;
import org.swathbook.plan.change.StandingPass;
import org.swathbook.plan.change.StandingPasses;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.plan.choice.OptionMaker;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.plan.choice.Strengths;
import org.swathbook.program.Dose;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.rules.Say;
import org.swathbook.season.Kernel;
import org.swathbook.season.outcome.PassOutcome;

/**
 * Changes a written program as little as possible, so that it is legal, has what is asked, and
 * breaks no house rule that it did not break before: when a product is short, planting slips, or a
 * pass is on that was not planned so. Programs are looked at by the number of things that change,
 * fewest first. All single changes are scored; of those, and so on of each further number, the most
 * promising are walked in full, and the best of them changed again. What takes the place of a
 * product that works on a driver weed through its leaves does some of that work itself.
 */
public final class Keeping {
  /** More changes than this make another program: default, ours. */
  static final int MOST_CHANGES = 5;

  /** Beyond what serves again, so many changes more may be worth the house rules: default, ours. */
  private static final int FURTHER = 2;

  /** With each number of changes, as many as this are walked in full: default, ours. */
  private static final int WALKED = 48;

  /** Of each kind of last change as many as this are among them: default, ours. */
  private static final int WALKED_OF_A_KIND = 5;

  /** And as many as this are changed again: default, ours. */
  private static final int CHANGED_AGAIN = 5;

  private final Book book;
  private final TraceSet traces;
  private final PlanWishes wishes;
  private final LocalDate today;
  private final Effort anew;
  private final ChangeTerms terms;
  private final Wanting wanting;
  private final StandingPasses passes;
  private final LegalDoses doses;
  private final List<DoseOption> options;
  private final Strengths strengths;
  private final KeptWalks walks;
  private final IdentityHashMap<Pass, Integer> illegal = new IdentityHashMap<>();
  private int tried;

  /**
   * A program on the way, by what it wants and how it scores; lower wants are better, and of as
   * many it is better to be less far above the budget.
   */
  private record Step(
      Program program, List<SingleChange> changes, int wants, double overBudget, double score) {
    int size() {
      return changes.stream().mapToInt(SingleChange::size).sum();
    }
  }

  private Keeping(Book book, TraceSet traces, PlanWishes wishes, LocalDate today, Effort anew) {
    this.book = book;
    this.traces = traces;
    this.wishes = wishes;
    this.today = today;
    this.anew = anew;
    this.terms = ChangeTerms.keeping(today, wishes);
    this.wanting = new Wanting(book, wishes);
    Kernel kernel = Kernel.of(book, traces);
    this.passes = new StandingPasses(book, kernel);
    this.options = OptionMaker.make(book, traces.field()).options();
    this.doses =
        new LegalDoses(book, traces, terms, SeasonSoFar.of(book, traces.field(), today), options);
    this.strengths = new Strengths(book, traces, options);
    this.walks = new KeptWalks(book, kernel, today);
  }

  /**
   * @param traces of the field, observed to today
   * @param written a program of the field, as an adviser wrote or saved it, of which every anchor
   *     comes in the field's years
   * @param wishes what is asked of it now
   * @param today passes planned before stay as they are
   * @param anew how much is looked at for the program beside, which is planned as if none were
   *     written
   */
  public static Kept of(
      Book book,
      TraceSet traces,
      Program written,
      PlanWishes wishes,
      LocalDate today,
      Effort anew) {
    return new Keeping(book, traces, wishes, today, anew).kept(written);
  }

  private Kept kept(Program written) {
    SeasonSoFar.Standing standing =
        SeasonSoFar.of(book, traces.field(), today).standing(book, traces, written, today);
    Program now = standing.program();
    List<String> notes = new ArrayList<>(standing.notes());
    for (StandingPass s : passes.of(now)) {
      if (!s.made() && s.planned().isBefore(today)) {
        notes.add(
            "The journal has nothing of the pass of "
                + Say.date(s.planned())
                + ", which lies before today: it is taken as made as written.");
      }
    }
    KeptWalks.Walk asWritten = walks.first(now);
    for (PassOutcome p : asWritten.outcome().passes()) {
      for (Dose d : p.mix().doses()) {
        if (!p.made() && !wishes.allows(d)) {
          OwnWork.countedOn(book, asWritten.outcome(), p.planned(), d)
              .filter(OwnWork::fails)
              .ifPresent(w -> notes.add(w.words()));
        }
      }
    }
    List<KeptProgram> found = search(now, asWritten);
    FieldPlan beside = new Planner(book, wishes, anew).plan(traces.field(), today);
    return new Kept(
        asWritten.told(now.name(), List.of(), asWritten),
        notes,
        wanting.of(now).stream().distinct().toList(),
        found,
        beside.programs().stream().findFirst(),
        beside.refusal().filter(r -> beside.programs().isEmpty()),
        tried);
  }

  private List<KeptProgram> search(Program now, KeptWalks.Walk asWritten) {
    Map<Integer, List<Step>> bySize = new TreeMap<>();
    bySize.put(0, List.of(step(now, List.of())));
    Set<List<Pass>> seen = new HashSet<>();
    List<KeptProgram> out = new ArrayList<>();
    Promising nearest = null;
    int last = MOST_CHANGES;
    for (int size = 0; size <= last; size++) {
      List<Promising> walked = new ArrayList<>();
      for (Step s : promising(bySize.getOrDefault(size, List.of()))) {
        KeptWalks.Walk walk = size == 0 ? asWritten : walks.of(filled(now, s));
        if (s.changes().stream()
            .allMatch(c -> OwnWork.isDone(book, asWritten.outcome(), walk.outcome(), c))) {
          walked.add(new Promising(s, walk));
        }
      }
      walked.sort(Promising.ORDER);
      boolean first = out.isEmpty();
      Optional<Promising> serving =
          walked.stream()
              .filter(p -> p.mayServe() && (first || p.walk().meetsHouseRules()))
              .filter(p -> p.walk().isLegal())
              .findFirst();
      if (serving.isPresent()) {
        Promising p = serving.get();
        out.add(p.walk().told(name(p, first), p.step().changes(), asWritten));
        last = Math.min(last, size + FURTHER);
        if (p.walk().meetsHouseRules()) {
          return out;
        }
      } else if (first) {
        nearest = nearest(nearest, walked);
      }
      walked.stream().limit(CHANGED_AGAIN).forEach(p -> changed(p.step(), bySize, seen));
    }
    if (out.isEmpty() && nearest != null) {
      out.add(
          nearest
              .walk()
              .told(
                  "As near to the house rules as was found", nearest.step().changes(), asWritten));
    }
    return out;
  }

  /** The legal program with all that is asked that is nearest to the house rules. */
  private static @Nullable Promising nearest(@Nullable Promising known, List<Promising> walked) {
    return walked.stream()
        .filter(p -> p.step().wants() == 0)
        .filter(p -> known == null || p.walk().deficit() < known.walk().deficit())
        .sorted(Comparator.comparingDouble(p -> p.walk().deficit()))
        .filter(p -> p.walk().isLegal())
        .findFirst()
        .orElse(known);
  }

  private Program filled(Program now, Step step) {
    return ChangeMaker.filled(book, traces, now, step.program());
  }

  private static String name(Promising p, boolean first) {
    String how =
        switch (p.step().size()) {
          case 0 -> "As written";
          case 1 -> "With one change";
          default -> "With " + p.step().size() + " changes";
        };
    return first ? how : how + ", within the house rules";
  }

  /** A step walked in full. */
  private record Promising(Step step, KeptWalks.Walk walk) {
    static final Comparator<Promising> ORDER =
        Comparator.comparingInt((Promising p) -> p.step.wants())
            .thenComparingDouble(p -> p.step.overBudget())
            .thenComparingInt(p -> p.walk.newlyBroken())
            .thenComparingDouble(p -> p.walk.deficit())
            .thenComparing(p -> p.walk.net(), Comparator.reverseOrder());

    /**
     * Has what is asked and breaks no house rule newly; what else blocks it is seen when judged.
     */
    boolean mayServe() {
      return step.wants() == 0 && walk.newlyBroken() == 0;
    }
  }

  /** The best by what they want and by quick score, and some of each kind of last change. */
  private List<Step> promising(List<Step> all) {
    List<Step> sorted =
        all.stream()
            .sorted(
                Comparator.comparingInt(Step::wants)
                    .thenComparingDouble(Step::overBudget)
                    .thenComparing(Comparator.comparingDouble(Step::score).reversed()))
            .toList();
    Set<Step> out = new LinkedHashSet<>();
    for (SingleChange.Kind kind : SingleChange.Kind.values()) {
      sorted.stream()
          .filter(s -> !s.changes().isEmpty())
          .filter(s -> s.changes().get(s.changes().size() - 1).kind() == kind)
          .limit(WALKED_OF_A_KIND)
          .forEach(out::add);
    }
    for (Step s : sorted) {
      if (out.size() >= WALKED) {
        break;
      }
      out.add(s);
    }
    return List.copyOf(out);
  }

  /** All that one more change makes of a program. */
  private void changed(Step from, Map<Integer, List<Step>> bySize, Set<List<Pass>> seen) {
    ChangeMaker maker =
        new ChangeMaker(book, traces, from.program(), passes.of(from.program()), terms, doses);
    List<SingleChange> all = new ArrayList<>(maker.ofPasses());
    if (from.size() + 2 <= MOST_CHANGES) {
      all.addAll(
          new AddedTanks(
                  traces, book.house(), maker, options, strengths, c -> passes.quick(c.program()))
              .all());
    }
    for (SingleChange c : all) {
      int size = from.size() + c.size();
      boolean keepsAPass = !c.program().passes().isEmpty();
      if (size <= MOST_CHANGES
          && keepsAPass
          && !undoes(c, from.changes())
          && seen.add(c.program().passes())) {
        List<SingleChange> changes = new ArrayList<>(from.changes());
        changes.add(c);
        List<Step> same = bySize.computeIfAbsent(size, s -> new ArrayList<>());
        same.add(step(c.program(), changes));
      }
    }
  }

  /** Whether a pass that was changed before goes: it could have gone at once. */
  private static boolean undoes(SingleChange change, List<SingleChange> before) {
    return change.kind() == SingleChange.Kind.LEAVE_OUT_PASS
        && before.stream()
            .filter(b -> b.kind() != SingleChange.Kind.LEAVE_OUT_PASS)
            .anyMatch(b -> b.movedTo().orElse(b.pass()).equals(change.pass()));
  }

  private Step step(Program program, List<SingleChange> changes) {
    tried++;
    int wants = wanting.of(program).size();
    for (StandingPass s : passes.of(program)) {
      wants += illegal.computeIfAbsent(s.pass(), p -> illegal(s));
    }
    if (!passes.isLegalInOrder(program)) {
      wants++;
    }
    return new Step(program, changes, wants, wanting.overBudget(program), passes.quick(program));
  }

  /** Doses that the use rules refuse on that day, and pairs that may not stand in one tank. */
  private int illegal(StandingPass s) {
    if (s.made() || s.planned().isBefore(today)) {
      return 0;
    }
    PassTiming timing = s.prepared().timing();
    int out =
        (int)
            UseJudge.facts(book, traces, s.pass().mix().doses().size(), timing, s.pass().mix())
                .stream()
                .filter(UseJudge::blocks)
                .count();
    List<Dose> tank = s.pass().mix().doses();
    for (int i = 0; i < tank.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (PairJudge.blocks(book, traces, timing, tank.get(j), tank.get(i))) {
          out++;
        }
      }
    }
    return out;
  }
}
