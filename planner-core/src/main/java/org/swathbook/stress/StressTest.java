package org.swathbook.stress;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.swathbook.check.Judgement;
import org.swathbook.check.ProgramJudge;
import org.swathbook.measure.Money;
import org.swathbook.plan.change.ChangeTerms;
import org.swathbook.plan.change.JudgedChange;
import org.swathbook.plan.change.SingleChange;
import org.swathbook.plan.change.SingleChanges;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;

/** Puts every case to a program and looks for what then helps. */
public final class StressTest {
  private final Situation plain;
  private final Kernel plainKernel;

  private record Walked(Stressed stressed, Kernel kernel, StressedWalk walk) {}

  private StressTest(Situation plain) {
    this.plain = plain;
    this.plainKernel = Kernel.of(plain.book(), plain.traces());
  }

  /**
   * The results of all cases, in their order.
   *
   * @param progress hears the name of each case before it is put
   */
  public static List<StressResult> of(Situation plain, Consumer<String> progress) {
    StressTest test = new StressTest(plain);
    List<StressResult> out = new ArrayList<>();
    for (StressCase c : StressCase.all()) {
      progress.accept(c.name());
      out.add(test.result(c));
    }
    return List.copyOf(out);
  }

  private StressResult result(StressCase stress) {
    Posed posed = stress.pose(plain);
    if (posed.whyNot().isPresent()) {
      return new StressResult(
          stress.name(),
          posed.title(),
          posed.whyNot(),
          List.of(),
          List.of(),
          -1,
          Optional.empty(),
          List.of());
    }
    List<Walked> walked = posed.variants().stream().map(this::walk).toList();
    int worst = 0;
    for (int i = 1; i < walked.size(); i++) {
      if (loss(walked.get(i)).compareTo(loss(walked.get(worst))) > 0) {
        worst = i;
      }
    }
    Walked w = walked.get(worst);
    return new StressResult(
        stress.name(),
        posed.title(),
        Optional.empty(),
        posed.notes(),
        walked.stream().map(Walked::walk).toList(),
        worst,
        Optional.of(w.stressed.knownFrom()),
        remedies(w));
  }

  private static Money loss(Walked w) {
    return w.walk.outcome().loss();
  }

  private Walked walk(Stressed s) {
    Kernel kernel = Kernel.of(s.book(), s.traces());
    SeasonOutcome outcome = SeasonWalk.walk(s.book(), kernel, s.program());
    Judgement judged = ProgramJudge.judge(s.book(), s.traces(), outcome, plain.today());
    return new Walked(
        s,
        kernel,
        new StressedWalk(
            s.of(),
            outcome,
            judged,
            Breaks.between(plain.judgement(), judged),
            fallen(s, outcome),
            s.watered().map(t -> SeasonWalk.walk(s.book(), t, s.program())),
            s.milder().map(m -> SeasonWalk.walk(m.book(), m.traces(), m.program()))));
  }

  private List<FallenPass> fallen(Stressed s, SeasonOutcome outcome) {
    List<Integer> places = PassPlaces.inOrder(s.book(), s.traces(), s.program());
    List<FallenPass> out = new ArrayList<>();
    for (PassOutcome p : outcome.passes()) {
      int origin = plain.places().indexOf(s.origins().get(places.get(p.index())));
      int before = plain.outcome().passes().get(origin).missedYears().size();
      if (p.missedYears().size() > before) {
        out.add(new FallenPass(origin, p.planned(), p.missedYears().size(), before));
      }
    }
    return out;
  }

  private List<Remedy> remedies(Walked w) {
    Stressed s = w.stressed;
    ChangeTerms terms = ChangeTerms.helping(s.knownFrom(), s.unavailable(), s.extraForAddedPass());
    return new SingleChanges(s.book(), w.kernel, w.walk.outcome(), terms, plain.today())
        .best().stream().map(c -> new Remedy(c, withoutTrouble(s, c))).toList();
  }

  /** A change on a program of the same passes on the same days can be tried without the trouble. */
  private Optional<Money> withoutTrouble(Stressed s, JudgedChange change) {
    boolean same =
        s.program().equals(plain.program())
            && s.book()
                .findField(plain.field().id().value())
                .filter(plain.field()::equals)
                .isPresent();
    if (!same) {
      return Optional.empty();
    }
    SeasonOutcome o = SeasonWalk.walk(plain.book(), plainKernel, change.change().program());
    Money extra =
        change.change().kind() == SingleChange.Kind.ADD_PASS ? s.extraForAddedPass() : Money.ZERO;
    return o.net().flatMap(n -> plain.outcome().net().map(n::minus)).map(m -> m.minus(extra));
  }
}
