package org.swathbook.plan.bound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.swathbook.book.Book;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.Drawn;
import org.swathbook.plan.DrawnPrograms;
import org.swathbook.plan.SmallBook;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Stop;
import org.swathbook.plan.draft.Walked;

/** A field drawn at random, programs of it, and the same as the bound on all programs sees them. */
final class DrawnTanks {
  private static final Book DEMO = DemoCopy.inMemory();
  private static final int MOST_PASSES = 8;

  final DrawnPrograms programs;
  final AllDoses all;

  private DrawnTanks(DrawnPrograms programs) {
    this.programs = programs;
    this.all = AllDoses.of(programs.small.book, programs.small.space(), programs.evaluator, false);
  }

  /** Empty where nothing may be sprayed, or nothing is left to be sprayed: told to the property. */
  static Optional<DrawnTanks> of(long seed) {
    SmallBook small = SmallBook.draw(DEMO, seed);
    List<Stop> stops = small.passes(MOST_PASSES);
    Optional<DrawnTanks> out =
        stops.isEmpty()
            ? Optional.empty()
            : Optional.of(new DrawnPrograms(small, stops, new Random(seed)))
                .filter(p -> !p.stops.isEmpty())
                .map(DrawnTanks::new);
    Drawn.something(out.isPresent());
    return out;
  }

  /** All that labels and wishes allow, walked. */
  List<Walked> walked() {
    return programs.walked();
  }

  List<Tank> tanks(Draft draft) {
    List<Tank> out = new ArrayList<>();
    for (Stop stop : draft.stops()) {
      List<Part> parts = new ArrayList<>();
      for (Day day : all.days()) {
        for (Part p : day.parts()) {
          if (day.date() == stop.date() && stop.options().contains(p.option().index())) {
            parts.add(p);
          }
        }
      }
      out.add(Tank.of(all, parts));
    }
    return out;
  }
}
