package org.swathbook.plan.exact;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.swathbook.book.Book;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.Drawn;
import org.swathbook.plan.DrawnPrograms;
import org.swathbook.plan.SmallBook;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Stop;

/**
 * Candidates of a small book that is drawn, and programs of them: what bounds are held to. A
 * property that asks for them fails where mostly none are drawn, since it would hold of nothing.
 */
record DrawnCandidates(DrawnPrograms programs, Candidates candidates, Random random) {
  private static final int MOST_PASSES = 8;
  private static final int PROGRAMS = 20;
  private static final Book DEMO = DemoCopy.inMemory();

  /** Empty where nothing may be sprayed in the book that is drawn. */
  static Optional<DrawnCandidates> of(long seed) {
    return of(SmallBook.draw(DEMO, seed), seed);
  }

  /** The same of the next book in which somebody counted a weed: one in three is. */
  static Optional<DrawnCandidates> counted(long seed) {
    SmallBook small = SmallBook.draw(DEMO, seed);
    for (long next = seed + 1; small.book.scoutings().isEmpty(); next++) {
      small = SmallBook.draw(DEMO, next);
    }
    return of(small, seed);
  }

  private static Optional<DrawnCandidates> of(SmallBook small, long seed) {
    Random random = new Random(seed);
    List<Stop> stops = small.passes(MOST_PASSES);
    if (stops.isEmpty()) {
      Drawn.something(false);
      return Optional.empty();
    }
    DrawnPrograms drawn = new DrawnPrograms(small, stops, random);
    Candidates candidates = new Candidates(small.book, drawn.evaluator, small.space(), drawn.stops);
    Drawn.something(drawn.drafts.size() > 1 && candidates.size() > 1);
    return Optional.of(new DrawnCandidates(drawn, candidates, random));
  }

  /** Whether somebody counted a weed: bounds then say less than what is, and never more. */
  boolean isCounted(int weed) {
    return candidates.kernel().traces().years().stream().anyMatch(y -> y.cohorts(weed).isScouted());
  }

  int place(Stop stop) {
    for (int c = 0; c < candidates.size(); c++) {
      if (candidates.get(c).stop().equals(stop)) {
        return c;
      }
    }
    throw new IllegalArgumentException("no candidate " + stop);
  }

  /** Some of the programs, drawn one by one. */
  Stream<Draft> some() {
    List<Draft> all = programs.drafts;
    return Stream.generate(() -> all.get(random.nextInt(all.size())))
        .limit(all.isEmpty() ? 0 : PROGRAMS);
  }
}
