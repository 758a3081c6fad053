package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.cli.json.PlanJson;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.text.CompareText;
import org.swathbook.cli.text.PlanText;

/** The look of a plan, over figures set by hand: recommended, not recommended, refused. */
class PlanReportsTest {
  private final Book book = Samples.book();
  private final ReportHead head = ReportHead.of(book, book.fields(), Samples.TODAY);
  private final List<PlannedField> plans =
      List.of(SamplePlans.recommended(), SamplePlans.notRecommended(), SamplePlans.refused());

  @Test
  void plan() {
    String text = PlanText.of(book, head, plans);
    assertThat(text.lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
    Goldens.check("sample/plan.txt", text);
  }

  @Test
  void planAsJson() {
    Goldens.check("sample/plan.json", PlanJson.of(book, head, plans));
  }

  @Test
  void comparison() {
    String text = CompareText.of(book, head, SamplePlans.compared());
    assertThat(text.lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
    Goldens.check("sample/compare.txt", text);
  }
}
