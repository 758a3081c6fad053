package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.cli.html.HandoutHtml;
import org.swathbook.cli.report.PlanVersion;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.program.Program;

/** The grower's copy of a plan, over figures set by hand. */
class HandoutTest {
  private final Book book = Samples.book();
  private final ReportHead head = ReportHead.of(book, book.fields(), Samples.TODAY);

  private String words(PlannedField plan, Map<org.swathbook.program.FieldId, Program> earlier) {
    String page = HandoutHtml.of(book, head, List.of(plan), Map.of(), earlier);
    WrittenPage.standsByItself(page);
    return WrittenPage.words(page);
  }

  @Test
  void aFieldSaysAllThatTheGrowerNeeds() {
    Program program = SamplePlans.recommended().programs().get(0).outcome().program();
    assertThat(words(SamplePlans.recommended(), Map.of()))
        .contains(
            "What to have in the shed",
            "What we fight",
            "What no longer works here",
            "nobody enters for",
            "What could spoil it",
            "Version " + PlanVersion.of(program),
            "The book keeps no earlier version",
            "Read and talked over, grower:");
  }

  /** 11 May less 15 days; the pass is planned for a day before planting. */
  @Test
  void theLastDayBeforePlantingIsSaid() {
    PlannedField plan = SamplePlans.recommended();
    String page =
        HandoutHtml.of(
            book, head, List.of(plan), Map.of(plan.field().id(), Samples.calendar()), Map.of());
    assertThat(WrittenPage.words(page))
        .contains(
            "Pass 1: plant no sooner than 15 days after it (metribuzin); for planting on 11 May its"
                + " last day is 26 Apr.");
  }

  /** Adjuvants are bought too, though the book has no prices of them. */
  @Test
  void theShedListNamesAdjuvants() {
    String said = words(SamplePlans.recommended(), Map.of());
    assertThat(said.substring(said.indexOf("What to have in the shed")))
        .containsPattern("ammonium-sulfate\\s+[0-9.]+ lb\\s+not said\\s+no price, not counted");
  }

  @Test
  void whatIsRefusedHasNothingToSpray() {
    assertThat(words(SamplePlans.refused(), Map.of()))
        .contains("NOTHING IS PLANNED")
        .doesNotContain("What goes on, and when");
  }

  @Test
  void whatHasChangedSinceTheKeptVersionIsSaid() {
    Program now = SamplePlans.recommended().programs().get(0).outcome().program();
    assertThat(words(SamplePlans.recommended(), Map.of(now.field(), now)))
        .contains("None: it is the version that the book keeps.");

    Program shorter = new Program(now.name(), now.field(), now.passes().subList(0, 1));
    assertThat(PlanVersion.changes(shorter, now)).anyMatch(c -> c.startsWith("Pass 2 is new: "));
    assertThat(PlanVersion.changes(now, shorter)).anyMatch(c -> c.startsWith("Pass 2 is gone: "));
    assertThat(PlanVersion.changes(now, now)).isEmpty();
    assertThat(PlanVersion.of(shorter)).isNotEqualTo(PlanVersion.of(now)).hasSize(6);
  }
}
