package org.swathbook.plan.draft;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.choice.FilledMix;
import org.swathbook.program.Anchor;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;

/** Turns a draft into a program whose tanks hold what the partners ask for besides themselves. */
public final class Tanks {
  private final Book book;
  private final TraceSet traces;
  private final PlanSpace space;
  private final Legality legality;
  private final List<Pass> made;

  /**
   * @param made passes that the journal has of the season; they stay as they are
   */
  public Tanks(Book book, TraceSet traces, PlanSpace space, Legality legality, List<Pass> made) {
    this.made = List.copyOf(made);
    this.book = book;
    this.traces = traces;
    this.space = space;
    this.legality = legality;
  }

  public Program program(Draft draft, String name) {
    List<Pass> passes = new ArrayList<>(made);
    for (Stop s : draft.stops()) {
      passes.add(
          new Pass(new Anchor.FromPlanting(space.grid().daysFromPlanting(s.date())), filled(s)));
    }
    return new Program(name, traces.field().id(), passes);
  }

  private Mix filled(Stop stop) {
    return FilledMix.of(book, traces, legality.timing(stop.date()), space.mix(stop));
  }
}
