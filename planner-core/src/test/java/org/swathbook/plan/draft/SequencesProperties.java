package org.swathbook.plan.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import org.swathbook.book.Book;
import org.swathbook.plan.PlanGround;
import org.swathbook.testing.DemoBook;

/** Parent actives asked about one by one say what the rules say of the whole program. */
class SequencesProperties {
  private static final Book BOOK = DemoBook.BOOK;

  private static final List<PlanGround> GROUNDS =
      List.of("ND-1", "ND-2", "QH-3", "OB-1").stream().map(f -> new PlanGround(BOOK, f)).toList();

  @Property(tries = 40, shrinking = ShrinkingMode.OFF)
  void oneParentAtATimeIsEnough(@ForAll long seed) {
    Random random = new Random(seed);
    PlanGround ground = GROUNDS.get(random.nextInt(GROUNDS.size()));
    Legality legality = new Legality(ground.book, ground.traces, ground.space.grid());
    Sequences sequences =
        new Sequences(ground.space.options(), d -> legality.allows(d, ground.space));
    int refused = 0;
    for (int i = 0; i < 20; i++) {
      Draft draft = draft(random, ground.space);
      boolean whole = legality.allows(draft, ground.space);
      assertThat(sequences.allow(draft)).as(draft.key()).isEqualTo(whole);
      assertThat(sequences.allow(draft)).isEqualTo(whole);
      refused += whole ? 0 : 1;
    }
    Statistics.label("some drafts are refused, and some are not")
        .collect(refused > 0 && refused < 20);
  }

  /** Few actives on few dates, so that they meet again. */
  private static Draft draft(Random random, PlanSpace space) {
    int n = space.options().size();
    int first = random.nextInt(n);
    Draft out = Draft.EMPTY;
    for (int pass = 0; pass < 2 + random.nextInt(3); pass++) {
      List<Integer> tank = new ArrayList<>();
      for (int k = 0; k < 1 + random.nextInt(3); k++) {
        tank.add((first + random.nextInt(6)) % n);
      }
      int date = random.nextInt(space.grid().size());
      if (!out.hasDate(date)) {
        out = out.with(new Stop(date, tank));
      }
    }
    return out;
  }
}
