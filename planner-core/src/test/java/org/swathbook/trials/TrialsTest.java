package org.swathbook.trials;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.swathbook.catalog.file.CatalogLoader;

/**
 * Walks published trials and keeps what comes out beside what was seen. There is no threshold here:
 * a miss is reported in the page, and a change of it is seen in the diff.
 */
@Tag("slow")
class TrialsTest {
  private static final Path PAGE = Path.of("TRIALS.md");
  private static final String BEGIN = "<!-- walked -->\n\n";

  @Test
  void thePageShowsTheTrialsAsTheEngineWalksThem() throws IOException {
    List<TrialPrediction> walked = walk("trial_results.csv", Published.read("trial_results.csv"));
    String fresh = new TrialReport(walked, Published.orderings(), Published.why()).page();
    String page = Files.readString(PAGE, StandardCharsets.UTF_8);
    int from = page.indexOf(BEGIN);
    assertThat(from).as("the marker " + BEGIN).isNotNegative();
    String whole = page.substring(0, from) + BEGIN + fresh;
    if (!whole.equals(page)) {
      Files.writeString(PAGE, whole, StandardCharsets.UTF_8);
    }

    assertThat(page).as("TRIALS.md was stale and is written anew; commit it").isEqualTo(whole);
  }

  /** Every row of the kept table is understood well enough to be walked. */
  @Test
  void noRowIsLeftOut() {
    assertThat(walk("trial_results.csv", Published.read("trial_results.csv")))
        .allSatisfy(p -> assertThat(p.controlPct()).as("row " + p.row().row()).isPresent());
  }

  /** Another table of the same columns: {@code -Dtrials.csv=FILE}; read in target/trials.md. */
  @Test
  @EnabledIfSystemProperty(named = "trials.csv", matches = ".+")
  void anotherTable() throws IOException {
    Path table = Path.of(System.getProperty("trials.csv"));
    List<TrialPrediction> walked = walk(table.toString(), Files.readAllBytes(table));
    Path page = Path.of("target", "trials.md");
    Files.writeString(
        page, new TrialReport(walked, List.of(), Map.of()).page(), StandardCharsets.UTF_8);

    assertThat(walked).as("rows of " + table).isNotEmpty();
  }

  private static List<TrialPrediction> walk(String name, byte[] table) {
    return TrialPrediction.of(
        TrialTable.read(name, table), new CatalogLoader().starter(), Published.climates());
  }
}
