package org.swathbook.plan.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.PlanGround;

/** Every pass a week late, held against programs walked as late as that. */
class DelayTest {
  private static PlanGround ground;
  private static List<Walked> walked;

  @BeforeAll
  static void walk() {
    ground = new PlanGround(DemoCopy.inMemory(), "ND-4");
    walked =
        ground.starts.all().stream()
            .limit(40)
            .map(ground.evaluator::full)
            .sorted(Goal.BEST)
            .toList();
  }

  /** One that was asked about nothing yet. */
  private static Delay delay() {
    return new Delay(ground.space, ground.evaluator);
  }

  private static Draft late(Draft draft) {
    int last = ground.space.grid().size() - 1;
    return new Draft(draft.stops().stream().map(s -> s.on(Math.min(last, s.date() + 7))).toList());
  }

  @Test
  void aPassIsSevenDaysLateAndNeverAfterTheLastDay() {
    Delay delay = delay();
    int last = ground.space.grid().size() - 1;
    assertThat(delay.late(new Stop(3, List.of(1)))).isEqualTo(new Stop(10, List.of(1)));
    assertThat(delay.late(new Stop(last - 7, List.of(1))).date()).isEqualTo(last);
    assertThat(delay.late(new Stop(last - 2, List.of(1))).date()).isEqualTo(last);
    assertThat(delay.late(new Stop(last, List.of(1))).date()).isEqualTo(last);
  }

  @Test
  void whatItNetsIsThatOfTheLateProgramWalked() {
    Delay delay = delay();
    for (Walked w : walked.subList(0, 5)) {
      assertThat(delay.net(w)).isEqualTo(ground.evaluator.full(late(w.draft())).net());
    }
    assertThat(walked.subList(0, 5)).anyMatch(w -> !delay.net(w).equals(w.net()));
  }

  @Test
  void theOneThatNetsMostWhenLateIsLeastHurt() {
    Delay delay = delay();
    assertThat(walked.size()).isGreaterThan(5);
    Walked least = delay.leastHurt(walked).orElseThrow();
    assertThat(walked.stream().limit(30).map(delay::net))
        .allMatch(m -> m.compareTo(delay.net(least)) <= 0);
    assertThat(delay.leastHurt(List.of())).isEqualTo(Optional.empty());
  }

  /** Beyond the thirty best only those whose delay was asked about before. */
  @Test
  void beyondTheBestOnlyWhatIsKnownCounts() {
    Delay delay = delay();
    Walked best = delay.leastHurt(walked).orElseThrow();
    List<Walked> others = new ArrayList<>();
    Walked worse =
        walked.stream()
            .filter(w -> delay.net(w).compareTo(delay.net(best)) < 0)
            .findFirst()
            .orElseThrow();
    for (int i = 0; i < 30; i++) {
      others.add(worse);
    }
    others.add(best);
    Delay fresh = delay();
    assertThat(fresh.leastHurt(others)).containsSame(worse);
    fresh.net(best);
    assertThat(fresh.leastHurt(others)).containsSame(best);
    assertThat(delay().leastHurt(others.subList(1, 31))).containsSame(best);
  }
}
