package org.swathbook.plan.change;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.check.SeasonSoFar;
import org.swathbook.growth.Anchors;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Quantity;
import org.swathbook.plan.choice.DateGrid;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.plan.choice.FilledMix;
import org.swathbook.program.Anchor;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;

/**
 * All changes of one step to the passes that may still change, as far as the rules on doses and on
 * pairs in a tank allow them: a rate raised, a product added, exchanged or left out, a pass moved.
 * What the user's passes hold stays as written, premixes too.
 */
public final class ChangeMaker {
  private final Book book;
  private final TraceSet traces;
  private final Program program;
  private final List<StandingPass> standing;
  private final ChangeTerms terms;
  private final LegalDoses doses;
  private final DateGrid grid;

  public ChangeMaker(
      Book book,
      TraceSet traces,
      Program program,
      List<StandingPass> standing,
      ChangeTerms terms,
      LegalDoses doses) {
    this.book = book;
    this.traces = traces;
    this.program = program;
    this.standing = List.copyOf(standing);
    this.terms = terms;
    this.doses = doses;
    this.grid = new DateGrid(traces.field(), book.house().dateStepDays());
  }

  /**
   * Of a program as it stands today.
   *
   * @param options doses to choose among
   */
  static ChangeMaker of(
      Book book,
      TraceSet traces,
      Program program,
      StandingPasses passes,
      ChangeTerms terms,
      List<DoseOption> options,
      LocalDate today) {
    SeasonSoFar soFar = SeasonSoFar.of(book, traces.field(), today);
    LegalDoses doses = new LegalDoses(book, traces, terms, soFar, options);
    return new ChangeMaker(book, traces, program, passes.of(program), terms, doses);
  }

  /** Changes of passes that stand, in a fixed order. */
  public List<SingleChange> ofPasses() {
    List<SingleChange> out = new ArrayList<>();
    for (StandingPass s : standing) {
      if (!s.planned().isBefore(terms.from()) && !s.made()) {
        tank(s, out);
        moves(s, out);
        if (terms.allows(SingleChange.Kind.LEAVE_OUT_PASS)) {
          out.add(leftOut(s));
        }
      }
    }
    return out;
  }

  private void tank(StandingPass s, List<SingleChange> out) {
    List<Dose> tank = s.pass().mix().doses();
    for (Dose held : tank) {
      if (tank.size() > 1) {
        out.add(
            ofTank(
                SingleChange.Kind.LEAVE_OUT_PRODUCT,
                s,
                without(tank, held),
                List.of(),
                Optional.of(held)));
      }
    }
    for (DoseOption option : legalOn(s.planned())) {
      Dose in = option.dose();
      for (Dose held : tank) {
        List<Dose> rest = without(tank, held);
        if (!takes(rest, in, s.prepared().timing())) {
          continue;
        }
        if (!held.product().id().equals(in.product().id())) {
          out.add(
              ofTank(SingleChange.Kind.EXCHANGE_PRODUCT, s, rest, List.of(in), Optional.of(held)));
        } else if (isMore(in, held)) {
          out.add(ofTank(SingleChange.Kind.RAISE_RATE, s, rest, List.of(in), Optional.of(held)));
        } else if (isMore(held, in) && terms.allows(SingleChange.Kind.LOWER_RATE)) {
          out.add(ofTank(SingleChange.Kind.LOWER_RATE, s, rest, List.of(in), Optional.of(held)));
        }
      }
      if (tank.size() < book.house().maxProducts() && takes(tank, in, s.prepared().timing())) {
        out.add(ofTank(SingleChange.Kind.ADD_PRODUCT, s, tank, List.of(in), Optional.empty()));
      }
    }
  }

  private static boolean isMore(Dose in, Dose held) {
    return Quantity.exceeds(in.actives().get(0).kgPerHa(), held.actives().get(0).kgPerHa());
  }

  private static List<Dose> without(List<Dose> doses, Dose gone) {
    List<Dose> out = new ArrayList<>(doses);
    out.remove(gone);
    return out;
  }

  /** Whether a tank takes one more dose: no active twice, no partner that refuses another. */
  boolean takes(List<Dose> tank, Dose in, PassTiming timing) {
    return tank.stream().noneMatch(d -> shareAnActive(d, in))
        && tank.stream().allMatch(d -> doses.together(d, in, timing));
  }

  private static boolean shareAnActive(Dose a, Dose b) {
    return a.actives().stream()
        .anyMatch(
            x ->
                b.actives().stream()
                    .anyMatch(y -> x.ingredient().id().equals(y.ingredient().id())));
  }

  private SingleChange ofTank(
      SingleChange.Kind kind, StandingPass s, List<Dose> rest, List<Dose> in, Optional<Dose> out) {
    List<Dose> tank = new ArrayList<>(rest);
    tank.addAll(in);
    Program changed = replacing(s.pass(), new Pass(s.pass().at(), s.pass().mix().with(tank)));
    return new SingleChange(kind, s.planned(), Optional.empty(), in, out, changed);
  }

  private SingleChange leftOut(StandingPass s) {
    List<Pass> passes = new ArrayList<>(program.passes());
    passes.remove(s.pass());
    return new SingleChange(
        SingleChange.Kind.LEAVE_OUT_PASS,
        s.planned(),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        program.with(passes));
  }

  private void moves(StandingPass s, List<SingleChange> out) {
    int place = grid.placeOf((int) (s.planned().toEpochDay() - planting().toEpochDay()));
    if (!grid.date(place).equals(s.planned())) {
      return;
    }
    for (int to : grid.near(place, terms.moveSteps())) {
      LocalDate date = grid.date(to);
      if (!date.isBefore(terms.from()) && hasRoom(s, date) && allAllowed(s.pass().mix(), date)) {
        Program changed = replacing(s.pass(), new Pass(new Anchor.OnDate(date), s.pass().mix()));
        out.add(
            new SingleChange(
                SingleChange.Kind.MOVE_PASS,
                s.planned(),
                Optional.of(date),
                List.of(),
                Optional.empty(),
                changed));
      }
    }
  }

  private boolean allAllowed(Mix mix, LocalDate date) {
    PassTiming timing = Timings.at(traces, date);
    List<Dose> tank = mix.doses();
    for (int i = 0; i < tank.size(); i++) {
      if (!doses.allows(tank.get(i), timing)) {
        return false;
      }
      for (int j = 0; j < i; j++) {
        if (!doses.together(tank.get(j), tank.get(i), timing)) {
          return false;
        }
      }
    }
    return true;
  }

  private LocalDate planting() {
    return traces.field().plantDate();
  }

  /**
   * Whether no other pass stands on a date to which one moves, and none nearer than the house lets
   * them lie; those that were written nearer may part, and come no nearer.
   */
  private boolean hasRoom(StandingPass moved, LocalDate date) {
    return standing.stream()
        .filter(s -> !s.equals(moved))
        .allMatch(
            s ->
                !s.planned().equals(date)
                    && (book.house().areApart(s.planned(), date)
                        || daysBetween(s.planned(), date)
                            >= daysBetween(s.planned(), moved.planned())));
  }

  private static long daysBetween(LocalDate one, LocalDate other) {
    return Math.abs(ChronoUnit.DAYS.between(one, other));
  }

  /** Whether one more pass on a date lies as far from all that stand as the house asks. */
  boolean isFree(LocalDate date) {
    return standing.stream()
        .noneMatch(s -> s.planned().equals(date) || !book.house().areApart(s.planned(), date));
  }

  /** Doses that may go into a tank on a date. */
  List<DoseOption> legalOn(LocalDate date) {
    return doses.on(date);
  }

  /** One more pass with these doses. */
  SingleChange added(LocalDate date, List<Dose> tank) {
    List<Pass> passes = new ArrayList<>(program.passes());
    passes.add(new Pass(new Anchor.OnDate(date), Mix.of(tank)));
    return new SingleChange(
        SingleChange.Kind.ADD_PASS,
        date,
        Optional.empty(),
        tank,
        Optional.empty(),
        program.with(passes));
  }

  /** The change with what its new tank asks for beside the products. */
  SingleChange filled(SingleChange change) {
    return change.with(filled(book, traces, program, change.program()));
  }

  /** A changed program in which all tanks that did not stand before have what they ask for. */
  public static Program filled(Book book, TraceSet traces, Program before, Program changed) {
    List<Pass> passes = new ArrayList<>();
    for (Pass p : changed.passes()) {
      boolean stood = before.passes().stream().anyMatch(old -> old.equals(p));
      passes.add(stood ? p : new Pass(p.at(), filled(book, traces, p)));
    }
    return changed.with(passes);
  }

  private static Mix filled(Book book, TraceSet traces, Pass p) {
    LocalDate date = Anchors.resolve(p.at(), traces, book.house().sizePercentile());
    return FilledMix.of(book, traces, Timings.at(traces, date), p.mix());
  }

  /**
   * Days on which a pass would come nearer to another than the house asks, but for that other's own
   * day: from the first that may change, every house step.
   */
  List<LocalDate> nearDates() {
    return dates(book.house().dateStepDays()).stream()
        .filter(d -> !isFree(d) && standing.stream().noneMatch(s -> s.planned().equals(d)))
        .toList();
  }

  /** Days on which a pass may be added: from the first that may change, every second house step. */
  List<LocalDate> openDates() {
    return dates(2 * book.house().dateStepDays()).stream().filter(this::isFree).toList();
  }

  /** From the first day that may change on; none where the house allows no pass more. */
  private List<LocalDate> dates(int step) {
    List<LocalDate> out = new ArrayList<>();
    if (standing.size() >= book.house().maxPasses()) {
      return out;
    }
    int first = 0;
    while (first < grid.size() && grid.date(first).isBefore(terms.from())) {
      first++;
    }
    for (int place = first; place < grid.size(); place += step) {
      out.add(grid.date(place));
    }
    return out;
  }

  private Program replacing(Pass old, Pass with) {
    return program.replacing(program.passes().indexOf(old), with);
  }
}
