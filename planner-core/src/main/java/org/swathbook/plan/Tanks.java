package org.swathbook.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.swathbook.book.Book;
import org.swathbook.check.UseJudge;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Anchor;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.rules.ActiveUse;
import org.swathbook.tank.Partner;
import org.swathbook.tank.TankNeeds;

/** Turns a draft into a program whose tanks hold what the partners ask for besides themselves. */
final class Tanks {
  private final Book book;
  private final TraceSet traces;
  private final PlanSpace space;
  private final Legality legality;
  private final List<Pass> made;

  /**
   * @param made passes that the journal has of the season; they stay as they are
   */
  Tanks(Book book, TraceSet traces, PlanSpace space, Legality legality, List<Pass> made) {
    this.made = List.copyOf(made);
    this.book = book;
    this.traces = traces;
    this.space = space;
    this.legality = legality;
  }

  Program program(Draft draft, String name) {
    List<Pass> passes = new ArrayList<>(made);
    for (Stop s : draft.stops()) {
      passes.add(
          new Pass(new Anchor.FromPlanting(space.grid().daysFromPlanting(s.date())), filled(s)));
    }
    return new Program(name, traces.field().id(), passes);
  }

  private Mix filled(Stop stop) {
    return filled(book, traces, legality.timing(stop.date()), space.mix(stop));
  }

  /** A mix with the adjuvants and the volume that its partners ask for beside those it has. */
  static Mix filled(Book book, TraceSet traces, PassTiming timing, Mix mix) {
    List<Partner> partners =
        UseJudge.facts(book, traces, 0, timing, mix).stream()
            .map(f -> new ActiveUse(f.dose(), f.active(), UseJudge.choose(f)).partner())
            .toList();
    TankNeeds needs = TankNeeds.of(partners);
    List<Adjuvant> adjuvants = new ArrayList<>(mix.adjuvants());
    for (Adjuvant a : needs.adjuvants()) {
      if (mix.adjuvants().stream().noneMatch(held -> held.kind().equals(a.kind()))) {
        adjuvants.add(a);
      }
    }
    OptionalDouble gallons =
        DoubleStream.concat(mix.gallonsPerAcre().stream(), needs.gallonsPerAcre().stream()).max();
    return new Mix(mix.doses(), adjuvants, gallons);
  }
}
