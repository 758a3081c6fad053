package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.swathbook.cli.terminal.ExitCode;

/** {@code calibrate}, which needs no book. */
class CalibrateCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** 15 gal/acre at 10 mph and 20 in are 15 · 10 · 20 / 5940 gal/min (computed). */
  @Test
  void flowAndCatchOfAWantedVolume() {
    Called called = Called.with("calibrate", "--spacing", "20", "--mph", "10", "--gpa", "15");

    assertThat(called.err()).isEmpty();
    assertThat(called.code()).isEqualTo(ExitCode.DONE);
    assertThat(called.out().lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
    assertThat(called.out())
        .containsPattern("flow +0\\.505 +gal/min")
        .containsPattern("course +204\\.2 +ft")
        .containsPattern("to be caught over the course +15\\.0 +fl oz")
        .contains("The label is the law.");
  }

  @Test
  void whatIsMissingForAVolumeIsSaid() {
    assertThat(Called.with("calibrate", "--spacing", "20", "--mph", "10").out())
        .contains("No volume and no flow can be reckoned of that", "--gpa", "--catch");
    assertThat(Called.with("calibrate", "--spacing", "20", "--mph", "10", "--gpa", "15").out())
        .doesNotContain("No volume and no flow");
  }

  /** LSU AgCenter, example 1: 102 ft in 17 s, 40 in rows, 14 oz of both nozzles of a row. */
  @Test
  void aWorkedExampleOfExtension() throws IOException {
    Called called =
        Called.with(
            "calibrate",
            "--spacing",
            "40",
            "--course",
            "102",
            "--time",
            "17",
            "--catch",
            "14",
            "--gpa",
            "15",
            "--psi",
            "40",
            "--json");
    JsonNode root = JSON.readTree(called.out());

    assertThat(Math.round(root.get("measuredGallonsPerAcre").doubleValue())).isEqualTo(14);
    assertThat(root.get("mph").doubleValue()).isBetween(4.0, 4.2);
    // (15 / 14.01)² · 40
    assertThat(root.get("psiForWanted").doubleValue()).isBetween(45.8, 45.9);
    assertThat(root.get("droplets").isNull()).isTrue();
    assertThat(root.get("waterGallonsPerAcre").isNull()).isTrue();
  }

  @Test
  void whatIsFarOffIsSaid() {
    String out =
        Called.with(
                "calibrate",
                "--spacing",
                "20",
                "--mph",
                "10",
                "--gpa",
                "15",
                "--flow",
                "0.6",
                "--psi",
                "40")
            .out();

    assertThat(out)
        .contains("18.8 % more than wanted: SET IT ANEW")
        .contains("28.3 psi")
        .contains("11.88 mph")
        .contains("NOT KNOWN here");
    assertThat(Called.with("calibrate", "--spacing", "20", "--flow", "0.5").out())
        .contains("NOT KNOWN without a speed");
  }

  @Test
  void everyMistakeIsOnePlainLine() {
    assertThat(Called.with("calibrate").err()).contains("--spacing");
    for (String[] wrong :
        new String[][] {
          {"--spacing", "0"},
          {"--spacing", "NaN"},
          {"--spacing", "20", "--mph", "5", "--time", "20"},
          {"--spacing", "20", "--catch", "5", "--flow", "1"},
          {"--spacing", "20", "--psi", "40"},
          {"--spacing", "20", "--gravity", "1.28"},
        }) {
      String[] args = new String[wrong.length + 1];
      args[0] = "calibrate";
      System.arraycopy(wrong, 0, args, 1, wrong.length);
      Called called = Called.with(args);
      assertThat(called.code()).isEqualTo(ExitCode.WRONG_INPUT);
      assertThat(called.out()).isEmpty();
      assertThat(called.err().lines()).hasSize(1);
    }
  }
}
