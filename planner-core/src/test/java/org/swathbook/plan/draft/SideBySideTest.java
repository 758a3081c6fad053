package org.swathbook.plan.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.PlanGround;
import org.swathbook.plan.choice.DateGrid;

/** What several threads score and walk side by side is what one does. */
class SideBySideTest {
  private static final PlanGround GROUND = new PlanGround(DemoCopy.inMemory(), "ND-1");

  /** Every dose at planting, alone and before every third one a month later; some twice. */
  private static List<Draft> drafts() {
    DateGrid grid = GROUND.space.grid();
    int planting = grid.placeOf(0);
    int later = grid.placeOf(30);
    List<Draft> out = new ArrayList<>();
    for (int first : GROUND.space.legalOn(planting)) {
      Draft pre = new Draft(List.of(new Stop(planting, List.of(first))));
      out.add(pre);
      List<Integer> posts = GROUND.space.legalOn(later);
      for (int i = 0; i < posts.size(); i += 3) {
        out.add(pre.with(new Stop(later, List.of(posts.get(i)))));
      }
      out.add(pre);
    }
    return out;
  }

  private static FieldEvaluator evaluator() {
    return new PlanGround(GROUND.book, "ND-1").evaluator;
  }

  @Test
  void scoresThatWereExpectedAreThoseFoundOneByOne() {
    List<Draft> drafts = drafts();
    FieldEvaluator together = evaluator();
    FieldEvaluator alone = evaluator();
    together.quick(drafts.get(3));
    together.expect(drafts);
    assertThat(together.scored()).isEqualTo(new HashSet<>(drafts).size()).isGreaterThan(50);
    for (Draft d : drafts) {
      assertThat(together.quick(d)).isEqualTo(alone.quick(d));
      assertThat(together.quickGoal(d)).isEqualTo(alone.quickGoal(d));
    }
    assertThat(together.scored()).isEqualTo(alone.scored());
  }

  @Test
  void programsWalkedTogetherAreThoseWalkedAloneInTheirOrder() {
    FieldEvaluator alone = evaluator();
    List<Draft> drafts = drafts().stream().distinct().filter(alone::legal).limit(60).toList();
    List<Walked> together = evaluator().full(drafts);
    assertThat(together).extracting(Walked::draft).containsExactlyElementsOf(drafts);
    for (Walked w : together) {
      Walked one = alone.full(w.draft());
      assertThat(w.outcome()).isEqualTo(one.outcome());
      assertThat(w.broken()).isEqualTo(one.broken());
      assertThat(w.net()).isEqualTo(one.net());
    }
  }
}
