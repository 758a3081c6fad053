package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.cli.html.PlanHtml;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.text.PlanText;
import org.swathbook.plan.PlannedProgram;

/** The page of a plan, over figures set by hand: recommended, not recommended, refused. */
class PlanHtmlTest {
  private final Book book = Samples.book();
  private final ReportHead head = ReportHead.of(book, book.fields(), Samples.TODAY);
  private final List<PlannedField> plans =
      List.of(SamplePlans.recommended(), SamplePlans.notRecommended(), SamplePlans.refused());

  @TempDir Path folder;

  @Test
  void thePageSaysWhatTheTextSays() {
    String page = PlanHtml.of(book, head, plans, Map.of());
    WrittenPage.standsByItself(page);
    String words = WrittenPage.words(page);
    assertThat(words)
        .contains("Recommended: ", "NOT recommended, the least bad: ", "REFUSED: ", "All fields");
    for (PlannedField plan : plans) {
      for (PlannedProgram p : plan.programs()) {
        assertThat(words).contains(p.name()).contains(p.givesUp());
      }
    }
    String text = PlanText.of(book, head, plans).replaceAll("\\s+", " ");
    for (String figure : text.replaceAll(".*?(\\d[\\d,]*\\.\\d+)|.+", "$1 ").split(" +")) {
      assertThat(words).contains(figure);
    }
  }

  /** How many live is said in a line of its own, and not behind the control as well. */
  @Test
  void survivorsAreSaidOnce() {
    PlannedField one = SamplePlans.recommended();
    String words =
        WrittenPage.words(PlanHtml.of(book, head, List.of(one), Map.of())).replaceAll("\\s+", " ");
    String sums = words.substring(words.indexOf("Control, mean of"), words.indexOf("Go to:"));

    assertThat(sums).contains("Plants an acre alive at harvest").doesNotContain("survivors/acre");
  }

  @Test
  void callsThatContradictAreRefusedBeforeTheWork() {
    Path demo = ProgramProcess.CLI.resolve("../demo-data");
    String file = folder.resolve("plan.html").toString();
    assertThat(Called.with("plan", demo, "ND-1", "--html", file, "--json").err())
        .contains("in place of --json");
    assertThat(Called.with("plan", demo, "ND-1", "--html", file, "--keep", "nd-1-two-layers").err())
        .contains("--keep is told as text");
    assertThat(Called.with("plan", demo, "ND-1", "--html", folder.toString()).err())
        .contains("this is a folder");
    assertThat(Path.of(file)).doesNotExist();
  }
}
