package org.swathbook.plan.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.check.PairJudge;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.choice.DateGrid;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.plan.choice.OptionMaker;

/**
 * No tank is planned in which one partner has to go without its adjuvant: clethodim asks for an
 * oil, which 2,4-D choline over soybean refuses (from memory, as their labels commonly read), and
 * without which it does little.
 */
class AdjuvantsTogetherTest {
  private static final Book BOOK = DemoCopy.inMemory();
  private static final Field FIELD = BOOK.findField("OB-1").orElseThrow();
  private static final TraceSet TRACES = TraceBuilder.build(BOOK, FIELD);

  private static DoseOption option(PlanSpace space, String active) {
    return space.options().stream()
        .filter(o -> o.ingredient().value().equals(active))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void twoThatNeedWhatTheOtherRefusesAreNotPlannedTogether() {
    DateGrid grid = new DateGrid(FIELD, BOOK.house().dateStepDays());
    Legality legality = new Legality(BOOK, TRACES, grid);
    PlanSpace space =
        new PlanSpace(
            FIELD,
            BOOK.house(),
            grid,
            OptionMaker.make(BOOK, FIELD).options(),
            legality::allows,
            legality::allows);
    DoseOption clethodim = option(space, "clethodim");
    DoseOption choline = option(space, "2-4-d-choline");
    DoseOption glyphosate = option(space, "glyphosate");
    int seen = 0;
    for (int date = 0; date < grid.size(); date++) {
      // Before planting 2,4-D choline refuses no oil.
      if (grid.daysFromPlanting(date) >= 14
          && space.legal(date, List.of(clethodim.index()))
          && space.legal(date, List.of(choline.index()))) {
        seen++;
        assertThat(space.legal(date, List.of(choline.index(), clethodim.index()))).isFalse();
        assertThat(space.legal(date, List.of(clethodim.index(), glyphosate.index()))).isTrue();
        // To the rules it is a tank of which they warn.
        assertThat(
                PairJudge.blocks(
                    BOOK, TRACES, legality.timing(date), clethodim.dose(), choline.dose()))
            .isFalse();
      }
    }
    assertThat(seen).isPositive();
  }
}
