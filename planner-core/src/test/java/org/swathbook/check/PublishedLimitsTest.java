package org.swathbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.book.Field;
import org.swathbook.catalog.Ingredient;
import org.swathbook.growth.Anchors;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Rate;
import org.swathbook.program.Anchor;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassPositions;
import org.swathbook.rules.Severity;
import org.swathbook.rules.UseFacts;

/**
 * Limits as extension services publish them, held against the rules on the starter catalog in
 * fields of the demo book. The last column names the source.
 */
class PublishedLimitsTest {

  private static Dose dose(String active, String rate) {
    Ingredient i = DemoFields.BOOK.catalog().findIngredient(active).orElseThrow();
    return Doses.ofIngredient(
        i, DemoFields.BOOK.catalog().singles(i.id()).get(0), Rate.parse(rate));
  }

  private static PassTiming timing(TraceSet traces, String at) {
    LocalDate date =
        at.matches("[-+]\\d+")
            ? traces.field().plantDate().plusDays(Integer.parseInt(at))
            : at.startsWith("harvest")
                ? traces
                    .field()
                    .harvestDate()
                    .orElseThrow()
                    .plusDays(Integer.parseInt(at.substring(7)))
                : Anchors.resolve(new Anchor.AtStage(at), traces, 0.9);
    return Timings.at(traces, date);
  }

  private static List<Finding> blocks(String fieldId, String at, String active, String rate) {
    Field field = DemoFields.field(fieldId);
    TraceSet traces = DemoFields.traces(field);
    Findings out = Findings.all();
    for (UseFacts facts :
        UseJudge.facts(
            DemoFields.BOOK, traces, 0, timing(traces, at), Mix.of(List.of(dose(active, rate))))) {
      out.addAll(UseJudge.judge(facts));
    }
    return out.sorted().stream().filter(f -> f.severity() == Severity.BLOCK).toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          ND-2 | V7  | atrazine             | 1.0 lb ai/acre   | stage-window       | corn 12 in: University of Maryland Extension 2025
          ND-2 | V9  | nicosulfuron         | 0.031 lb ai/acre | stage-window       | corn 20 in or V6: University of Maryland Extension 2025
          ND-2 | V10 | 2,4-D ester          | 0.25 lb ae/acre  | stage-window       | corn 8 in: University of Maryland Extension 2025
          ND-1 | R5  | 2,4-D choline        | 0.95 lb ae/acre  | stage-window       | soybean R1 or R2 by label year: Michigan State University Extension
          ND-1 | +5  | flumioxazin          | 0.08 lb ai/acre  | stage-window       | three days after planting: Iowa State University 2017
          ND-4 | -10 | 2,4-D ester          | 0.95 lb ae/acre  | planting-interval  | soybean 30 d above 0.5 lb: University of Nebraska 2022
          QH-2 | 0   | metribuzin           | 0.38 lb ai/acre  | soil-limit         | pH 7.5: Ladlie et al. 1976; cut-off from memory
          OB-4 | 0   | metribuzin           | 0.38 lb ai/acre  | soil-limit         | sand low in organic matter: Coble & Schrader 1973; cut-off from memory
          ND-4 | V3  | glyphosate           | 1.13 lb ae/acre  | trait-needed       | common practice, no source
          ND-1 | harvest-45 | clethodim     | 0.094 lb ai/acre | harvest-interval   | soybean 60 d: University of Minnesota Extension
          """)
  void isRefused(String field, String at, String active, String rate, String rule, String source) {
    String when = at.equals("0") ? "+0" : at;

    assertThat(blocks(field, when, active, rate))
        .as(source)
        .extracting(f -> f.rule().value())
        .contains(rule);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          ND-2 | V3  | atrazine     | 1.0 lb ai/acre   | corn 12 in: University of Maryland Extension 2025
          ND-2 | V4  | nicosulfuron | 0.031 lb ai/acre | corn 20 in or V6: University of Maryland Extension 2025
          ND-4 | -20 | 2,4-D ester  | 0.48 lb ae/acre  | soybean 7 d up to 0.5 lb: University of Nebraska 2022
          ND-1 | V3  | glyphosate   | 1.125 lb ae/acre | 1.13 lb ae over the crop; from memory
          """)
  void isLegal(String field, String at, String active, String rate, String source) {
    assertThat(blocks(field, at, active, rate)).as(source).isEmpty();
  }

  private static List<Finding> sequence(String fieldId, String active, String... daysAndRates) {
    Field field = DemoFields.field(fieldId);
    TraceSet traces = DemoFields.traces(field);
    List<DatedMix> passes = new ArrayList<>();
    for (int i = 0; i < daysAndRates.length; i += 2) {
      PassTiming t = timing(traces, daysAndRates[i]);
      passes.add(
          new DatedMix(
              i / 2,
              field.plantDate().plusDays(Integer.parseInt(daysAndRates[i])),
              PassPositions.of(traces, t),
              Mix.of(List.of(dose(active, daysAndRates[i + 1])))));
    }
    return SequenceJudge.judge(DemoFields.BOOK, field, passes).sorted().stream()
        .filter(f -> f.severity() == Severity.BLOCK)
        .toList();
  }

  /** Cornell University, atrazine application rates: 2.5 lb ai/acre in a calendar year in corn. */
  @Test
  void atrazineInAYearOfCorn() {
    assertThat(sequence("ND-2", "atrazine", "+0", "1.5 lb ai/acre", "+28", "1.0 lb ai/acre"))
        .isEmpty();
    assertThat(sequence("ND-2", "atrazine", "+0", "1.6 lb ai/acre", "+28", "1.0 lb ai/acre"))
        .extracting(f -> f.rule().value(), Finding::actual, Finding::limit)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("annual-cap", "2.6 lb ai/acre", "2.5 lb ai/acre"));
  }

  /** Two at least 12 days apart: label of 2,4-D choline, from memory. */
  @Test
  void cholineTwiceOverSoybean() {
    assertThat(
            sequence("ND-1", "2,4-D choline", "+24", "0.95 lb ae/acre", "+32", "0.95 lb ae/acre"))
        .extracting(f -> f.rule().value())
        .containsExactly("repeat-interval");
    assertThat(
            sequence("ND-1", "2,4-D choline", "+24", "0.95 lb ae/acre", "+36", "0.95 lb ae/acre"))
        .isEmpty();
  }
}
