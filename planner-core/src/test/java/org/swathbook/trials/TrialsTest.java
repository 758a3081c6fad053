package org.swathbook.trials;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.file.CatalogLoader;

@Tag("slow")
class TrialsTest {
  static byte[] resource(String name) {
    try (InputStream in = Objects.requireNonNull(TrialsTest.class.getResourceAsStream(name))) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void walk() {
    List<TrialRow> rows = TrialTable.read("t.csv", resource("/published/trial_results.csv"));
    List<TrialPrediction> p =
        TrialPrediction.of(
            rows,
            new CatalogLoader().starter(),
            RegionalClimate.read("c.csv", resource("/published/regional_climate.csv")));
    for (TrialPrediction t : p) {
      System.out.printf(
          "%3d%s %s pub %s pred %s err %s n=%d %s days %s %s%n",
          t.row().row(),
          t.row().isHeldOut() ? "*" : " ",
          t.row().trial(),
          t.row().published(),
          Math.round(t.controlPct().orElse(-1)),
          Math.round(t.error().orElse(-1)),
          t.treatments().size(),
          t.treatments().stream().map(x -> String.format("%.0f", x)).toList(),
          t.passDays(),
          t.notes());
    }
    System.out.printf(
        "P %s MAE pub calib %.2f held %.2f%n",
        System.getProperty("P"),
        p.stream()
            .filter(t -> !t.row().isHeldOut())
            .flatMapToDouble(t -> t.error().stream())
            .average()
            .orElse(0),
        p.stream()
            .filter(t -> t.row().isHeldOut())
            .flatMapToDouble(t -> t.error().stream())
            .average()
            .orElse(0));
    assertThat(p).isNotEmpty();
  }
}
