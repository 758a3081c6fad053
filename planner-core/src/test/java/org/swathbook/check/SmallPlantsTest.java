package org.swathbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Field;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Program;
import org.swathbook.rules.Finding;
import org.swathbook.season.SeasonWalk;

/** Sites that a weed is short of are not said to be beyond having when small plants feel them. */
class SmallPlantsTest {
  private static final String ONE_SITE =
      """
      format: swathbook.program/1
      name: 2,4-D alone over young corn
      field: ND-2
      passes:
        - at: 13 days after planting
          mix:
            - {ingredient: "2,4-D ester", rate: 0.475 lb ae/acre}
      """;

  /**
   * Mesotrione and glufosinate are rated under 80 % on giant ragweed, and above it on small plants.
   */
  @Test
  void aSiteForSmallPlantsIsOfferedAsThat() {
    Field field = DemoFields.field("ND-2");
    TraceSet traces = DemoFields.traces(field);
    Program program =
        ProgramReader.read("one.yaml", ONE_SITE.getBytes(StandardCharsets.UTF_8), DemoFields.BOOK);
    Judgement j =
        ProgramJudge.judge(
            DemoFields.BOOK,
            traces,
            SeasonWalk.walk(DemoFields.BOOK, traces, program),
            LocalDate.of(2027, 3, 1));

    assertThat(j.findings())
        .filteredOn(f -> f.rule().value().equals("single-site"))
        .filteredOn(f -> f.about().weed().filter(w -> w.value().equals("AMBTR")).isPresent())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.message()).doesNotContain("cannot be had");
              assertThat(f.remedy()).contains("small plants and a partner of site 10 or 27");
            })
        .extracting(Finding::actual)
        .isEqualTo("1");
  }
}
