package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.check.Judgement;
import org.swathbook.cli.json.RulesJson;
import org.swathbook.cli.json.SeasonJson;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.text.RulesText;
import org.swathbook.cli.text.SeasonText;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.RulePage;
import org.swathbook.rules.Severity;
import org.swathbook.season.outcome.SeasonOutcome;

/** The look of the reports, over figures set by hand. */
class ReportsTest {
  private final Book book = Samples.book();
  private final ReportHead head = ReportHead.of(book, book.fields(), Samples.TODAY);
  private final SeasonOutcome outcome = Samples.outcome("Two layers", 2);
  private final Judgement judgement = SampleJudgement.of(SampleJudgement.broken());
  private final List<RulePage> rules =
      List.of(
          new RulePage(
              new RuleId("sample-rule"),
              "use",
              Severity.BLOCK,
              "Is this a sample?",
              "Always, since it is the sample by which the look of the rule book is kept, and its"
                  + " words are long enough to need a second line.",
              List.of("common practice, no source", "another source"),
              "a sample",
              "no sample"));

  @Test
  void season() {
    String text = SeasonText.of(book, head, Samples.field(), outcome, judgement, List.of());
    assertThat(text.lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
    Goldens.check("sample/season.txt", text);
  }

  @Test
  void seasonAsJson() {
    Goldens.check(
        "sample/season.json",
        SeasonJson.of(
            book, head, Samples.field(), outcome, judgement, Samples.calendar(), List.of()));
  }

  @Test
  void seasonThatGoesWrong() {
    String text =
        SeasonText.of(book, head, Samples.field(), outcome, judgement, SampleStress.results());
    assertThat(text.lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
    Goldens.check(
        "sample/season-stress.txt",
        text.substring(text.indexOf("What if"), text.indexOf("How to read")));
  }

  @Test
  void rules() {
    Goldens.check("sample/rules.txt", RulesText.list(rules));
    Goldens.check("sample/rule.txt", RulesText.one(rules.get(0)));
  }

  @Test
  void rulesAsJson() {
    Goldens.check("sample/rules.json", RulesJson.of(rules));
  }
}
