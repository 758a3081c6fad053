package org.swathbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.rules.Ask;
import org.swathbook.rules.Severity;
import org.swathbook.testing.MixCase;

/** What is said of an active that a second product brings more of. */
class GrowingTankTest {
  private static final String DICAMBA = "dicamba-4sl";
  private static final String WITH_DIFLUFENZOPYR = "dicamba-diflufenzopyr-70wg";

  private static List<String> blocks(MixCase job) {
    return job.findings().stream()
        .filter(f -> f.severity() == Severity.BLOCK)
        .filter(f -> f.about().ingredient().map(i -> i.value().equals("dicamba")).orElse(false))
        .map(f -> f.rule().value())
        .distinct()
        .toList();
  }

  /**
   * Ten inches at V4: of the uses of dicamba only that of an eighth of a pound is open, which a
   * granule with diflufenzopyr brings, and for the granule it is the one to say. The liquid has
   * none.
   */
  @Test
  void theUseThatIsOpenOnTheDaySpeaksWhateverElseBringsTheActive() {
    MixCase liquid = MixCase.in("corn").day(24, "V4", 10).product(DICAMBA, "16 fl oz/acre");
    MixCase granule =
        MixCase.in("corn").day(24, "V4", 10).product(WITH_DIFLUFENZOPYR, "8 oz weight/acre");
    MixCase both =
        MixCase.in("corn")
            .day(24, "V4", 10)
            .product(DICAMBA, "16 fl oz/acre")
            .product(WITH_DIFLUFENZOPYR, "1.6 oz weight/acre");

    assertThat(blocks(liquid)).containsExactly("stage-window");
    assertThat(blocks(granule)).containsExactly("rate-above-use");
    assertThat(blocks(both)).containsExactlyInAnyOrder("stage-window", "rate-above-use");
  }

  /** Bond 2016: 28 days at half a pound; more than the label has waits no shorter. */
  @Test
  void moreThanTheLabelHasWaitsAtLeastAsLong() {
    MixCase half = MixCase.in("soybean").day(-8, "", 0).product(DICAMBA, "16 fl oz/acre");
    MixCase more = MixCase.in("soybean").day(-8, "", 0).product(DICAMBA, "18 fl oz/acre");
    MixCase early = MixCase.in("soybean").day(-75, "", 0).product(DICAMBA, "18 fl oz/acre");

    assertThat(blocks(half)).contains("planting-interval").doesNotContain("rate-above-use");
    assertThat(blocks(more)).contains("planting-interval", "rate-above-use");
    assertThat(blocks(early)).contains("rate-above-use").doesNotContain("planting-interval");
  }

  /** The premix is no partner of itself, the diflufenzopyr in it is one of the other dicamba. */
  @Test
  void whatIsAskedOfAListDoesNotTurnOnTheOrderOfTheTank() {
    MixCase one =
        MixCase.in("soybean", "dicamba")
            .day(20, "V2", 5)
            .product(DICAMBA, "16 fl oz/acre")
            .product(WITH_DIFLUFENZOPYR, "1.6 oz weight/acre");
    MixCase other =
        MixCase.in("soybean", "dicamba")
            .day(20, "V2", 5)
            .product(WITH_DIFLUFENZOPYR, "1.6 oz weight/acre")
            .product(DICAMBA, "16 fl oz/acre");

    assertThat(lists(one))
        .containsExactly("whether the partner list of dicamba for the date allows diflufenzopyr");
    assertThat(lists(other)).isEqualTo(lists(one));
  }

  private static List<String> lists(MixCase job) {
    return job.judge().judge(job.job()).judgement().asks().stream()
        .map(Ask::what)
        .filter(w -> w.contains("partner list of dicamba"))
        .toList();
  }
}
