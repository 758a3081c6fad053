package org.swathbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.swathbook.control.ControlModels;
import org.swathbook.growth.GrowthModels;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;
import org.swathbook.weather.WeatherModels;

/**
 * The read-me's tables of equations are written from the cards. When they are stale, this test
 * writes them anew and fails once.
 */
class ModelPageTest {
  private static final Path README = Path.of("README.md");

  static List<ModelCard> cards() {
    return Stream.of(
            WeatherModels.cards(),
            GrowthModels.cards(),
            ControlModels.cards(),
            SeasonModels.cards())
        .flatMap(List::stream)
        .toList();
  }

  @Test
  void theReadMeShowsTheModelsAsTheyAre() throws IOException {
    String readme = Files.readString(README, StandardCharsets.UTF_8);
    String fresh = readme;
    for (ModelSection section : ModelSection.values()) {
      fresh = withTable(fresh, section);
    }
    if (!fresh.equals(readme)) {
      Files.writeString(README, fresh, StandardCharsets.UTF_8);
    }

    assertThat(readme).as("README.md was stale and is written anew; commit it").isEqualTo(fresh);
  }

  private static String withTable(String readme, ModelSection section) {
    String key = section.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    String begin = "<!-- models: " + key + " -->\n";
    String end = "<!-- end of models: " + key + " -->\n";
    int from = readme.indexOf(begin);
    int to = readme.indexOf(end);
    assertThat(from).as("the marker " + begin).isNotNegative();
    assertThat(to).as("the marker " + end).isGreaterThan(from);
    return readme.substring(0, from) + begin + table(section) + readme.substring(to);
  }

  private static String table(ModelSection section) {
    StringBuilder out = new StringBuilder();
    out.append(
        "\n| what | equation | constants, units | source | class |\n|---|---|---|---|---|\n");
    for (ModelCard c : cards()) {
      if (c.section() == section) {
        out.append("| " + c.what() + " | " + c.equation() + " | " + c.parameters())
            .append(" | " + c.source() + " | `" + c.model().getSimpleName() + "` |\n");
      }
    }
    return out.append("\n").toString();
  }
}
