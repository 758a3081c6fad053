package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.testing.MixCase;
import org.swathbook.weather.StationWeather;

/**
 * Four years of five cannot be told by the few years of a young station: eight are enough (default,
 * ours).
 */
class EnoughYearsTest {
  private static StationWeather of(StationWeather all, int years) {
    LocalDate last = all.days().get(all.days().size() - 1).date();
    LocalDate end = LocalDate.of(last.getYear(), 10, 31);
    return new StationWeather(
        all.id(),
        all.days().stream()
            .filter(
                d ->
                    !d.date().isBefore(LocalDate.of(end.getYear() - years, 9, 1))
                        && !d.date().isAfter(end))
            .toList());
  }

  @ParameterizedTest
  @CsvSource({"8, false", "7, true"})
  void fewYearsAreTold(int years, boolean few) {
    MixCase field = MixCase.in("soybean", "glyphosate").station(s -> of(s, years));
    List<String> said =
        field
            .judgedAsProgram(
                MixCase.in("soybean", "glyphosate").day(24, "V2", 5).tank("glyphosate 1.0 ae"))
            .findings()
            .stream()
            .filter(f -> f.rule().value().equals("window-confidence"))
            .map(f -> f.severity().word() + ": " + f.message())
            .toList();
    if (few) {
      assertThat(said)
          .containsExactly(
              "note: Only 7 weather years: too few to say in how many the passes find their days.");
    } else {
      assertThat(said).isEmpty();
    }
  }
}
