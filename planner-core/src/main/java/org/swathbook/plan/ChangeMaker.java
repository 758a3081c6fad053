package org.swathbook.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.growth.Anchors;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Quantity;
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
final class ChangeMaker {
  private final Book book;
  private final TraceSet traces;
  private final Program program;
  private final List<StandingPass> standing;
  private final ChangeTerms terms;
  private final List<DoseOption> options;
  private final DateGrid grid;
  private final DoseLegality legality;
  private final Map<LocalDate, List<DoseOption>> legal = new HashMap<>();

  ChangeMaker(
      Book book,
      TraceSet traces,
      Program program,
      List<StandingPass> standing,
      ChangeTerms terms,
      List<DoseOption> options) {
    this.book = book;
    this.traces = traces;
    this.program = program;
    this.standing = List.copyOf(standing);
    this.terms = terms;
    this.options = List.copyOf(options);
    this.grid = new DateGrid(traces.field(), book.house().dateStepDays());
    this.legality = new DoseLegality(book, traces);
  }

  /** Changes of passes that stand, in a fixed order. */
  List<SingleChange> ofPasses() {
    List<SingleChange> out = new ArrayList<>();
    for (StandingPass s : standing) {
      if (!s.planned().isBefore(terms.from()) && !(s.pass().at() instanceof Anchor.Made)) {
        tank(s, out);
        moves(s, out);
      }
    }
    return out;
  }

  private void tank(StandingPass s, List<SingleChange> out) {
    List<Dose> doses = s.pass().mix().doses();
    for (Dose held : doses) {
      if (doses.size() > 1) {
        out.add(
            ofTank(
                SingleChange.Kind.LEAVE_OUT_PRODUCT,
                s,
                without(doses, held),
                List.of(),
                Optional.of(held)));
      }
    }
    for (DoseOption option : legalOn(s.planned())) {
      Dose in = option.dose();
      for (Dose held : doses) {
        List<Dose> rest = without(doses, held);
        if (!takes(rest, in, s.prepared().timing())) {
          continue;
        }
        if (!held.product().id().equals(in.product().id())) {
          out.add(
              ofTank(SingleChange.Kind.EXCHANGE_PRODUCT, s, rest, List.of(in), Optional.of(held)));
        } else if (isMore(in, held)) {
          out.add(ofTank(SingleChange.Kind.RAISE_RATE, s, rest, List.of(in), Optional.of(held)));
        }
      }
      if (doses.size() < book.house().maxProducts() && takes(doses, in, s.prepared().timing())) {
        out.add(ofTank(SingleChange.Kind.ADD_PRODUCT, s, doses, List.of(in), Optional.empty()));
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
        && tank.stream().allMatch(d -> legality.allows(d, in, timing));
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
    List<Dose> doses = new ArrayList<>(rest);
    doses.addAll(in);
    Mix old = s.pass().mix();
    Mix mix = new Mix(doses, old.adjuvants(), old.gallonsPerAcre());
    Program changed = replacing(s.pass(), new Pass(s.pass().at(), mix));
    return new SingleChange(kind, s.planned(), Optional.empty(), in, out, changed);
  }

  private void moves(StandingPass s, List<SingleChange> out) {
    int place = grid.placeOf((int) (s.planned().toEpochDay() - planting().toEpochDay()));
    if (!grid.date(place).equals(s.planned())) {
      return;
    }
    for (int to : grid.near(place)) {
      LocalDate date = grid.date(to);
      if (!date.isBefore(terms.from()) && isFree(date) && allAllowed(s.pass().mix(), date)) {
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
    List<Dose> doses = mix.doses();
    for (int i = 0; i < doses.size(); i++) {
      if (!legality.allows(doses.get(i), timing)) {
        return false;
      }
      for (int j = 0; j < i; j++) {
        if (!legality.allows(doses.get(j), doses.get(i), timing)) {
          return false;
        }
      }
    }
    return true;
  }

  private LocalDate planting() {
    return traces.field().plantDate();
  }

  boolean isFree(LocalDate date) {
    return standing.stream().noneMatch(s -> s.planned().equals(date));
  }

  /** Doses that can be had and that the use rules let pass on a date. */
  List<DoseOption> legalOn(LocalDate date) {
    return legal.computeIfAbsent(
        date,
        d -> {
          PassTiming timing = Timings.at(traces, d);
          return options.stream()
              .filter(o -> !terms.unavailable().contains(o.dose().product().id()))
              .filter(o -> legality.allows(o.dose(), timing))
              .toList();
        });
  }

  /** One more pass with these doses. */
  SingleChange added(LocalDate date, List<Dose> doses) {
    List<Pass> passes = new ArrayList<>(program.passes());
    passes.add(new Pass(new Anchor.OnDate(date), Mix.of(doses)));
    return new SingleChange(
        SingleChange.Kind.ADD_PASS,
        date,
        Optional.empty(),
        doses,
        Optional.empty(),
        new Program(program.name(), program.field(), passes));
  }

  /** The change with what its new tank asks for beside the products. */
  SingleChange filled(SingleChange change) {
    List<Pass> passes = new ArrayList<>();
    for (Pass p : change.program().passes()) {
      boolean stood = program.passes().stream().anyMatch(old -> old.equals(p));
      passes.add(stood ? p : new Pass(p.at(), filled(p)));
    }
    return change.with(new Program(program.name(), program.field(), passes));
  }

  private Mix filled(Pass p) {
    LocalDate date = Anchors.resolve(p.at(), traces, book.house().sizePercentile());
    return Tanks.filled(book, traces, Timings.at(traces, date), p.mix());
  }

  /** Days on which a pass may be added: from the first that may change, every second house step. */
  List<LocalDate> openDates() {
    List<LocalDate> out = new ArrayList<>();
    if (standing.size() >= book.house().maxPasses()) {
      return out;
    }
    int first = 0;
    while (first < grid.size() && grid.date(first).isBefore(terms.from())) {
      first++;
    }
    for (int place = first; place < grid.size(); place += 2 * book.house().dateStepDays()) {
      if (isFree(grid.date(place))) {
        out.add(grid.date(place));
      }
    }
    return out;
  }

  private Program replacing(Pass old, Pass with) {
    List<Pass> passes = new ArrayList<>(program.passes());
    for (int i = 0; i < passes.size(); i++) {
      if (passes.get(i).equals(old)) {
        passes.set(i, with);
        break;
      }
    }
    return new Program(program.name(), program.field(), passes);
  }
}
