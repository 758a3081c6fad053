package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.testing.MixCase;

/** What the job says of working the spray in. */
class WorkedInTest {

  private static List<Severity> of(MixCase job) {
    return job.judge().judge(job.job()).judgement().findings().stream()
        .filter(f -> f.rule().value().equals("incorporation-needed"))
        .map(Finding::severity)
        .toList();
  }

  private static MixCase corn(String tank) {
    return MixCase.in("corn").day(0, "", 0).tank(tank);
  }

  private static MixCase soybean(String tank) {
    return MixCase.in("soybean").day(0, "", 0).tank(tank);
  }

  /** PNW Weed Management Handbook, sweet corn: pendimethalin is never worked in. */
  @Test
  void pendimethalinInCornStaysOnTop() {
    assertThat(of(corn("pendimethalin 0.95 ai").incorporated(true)))
        .containsExactly(Severity.BLOCK);
    assertThat(of(corn("pendimethalin 0.95 ai").incorporated(false))).isEmpty();
    assertThat(of(corn("pendimethalin 0.95 ai"))).isEmpty();
  }

  /** PNW Weed Management Handbook: trifluralin is worked in within 24 hours. */
  @Test
  void theJobsWordGoesBeforeTheFields() {
    assertThat(of(soybean("trifluralin 0.75 ai"))).containsExactly(Severity.BLOCK);
    assertThat(of(soybean("trifluralin 0.75 ai").incorporated(true)))
        .containsExactly(Severity.NOTE);
    assertThat(of(soybean("trifluralin 0.75 ai").field(f -> f.tilled())))
        .containsExactly(Severity.NOTE);
    assertThat(of(soybean("trifluralin 0.75 ai").field(f -> f.tilled()).incorporated(false)))
        .containsExactly(Severity.BLOCK);
  }

  @Test
  void whereTheLabelIsNotWrittenDownItIsAskedFor() {
    MixCase job = corn("S-metolachlor 1.3 ai").incorporated(true);

    assertThat(job.judge().judge(job.job()).judgement().asks())
        .extracting(Ask::what)
        .contains("whether S-metolachlor may be worked in, in corn");
    MixCase onTop = corn("S-metolachlor 1.3 ai");
    assertThat(onTop.judge().judge(onTop.job()).judgement().asks())
        .extracting(Ask::what)
        .doesNotContain("whether S-metolachlor may be worked in, in corn");
  }
}
