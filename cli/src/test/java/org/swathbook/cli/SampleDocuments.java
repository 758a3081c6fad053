package org.swathbook.cli;

import java.util.List;
import java.util.Map;
import org.swathbook.book.Book;
import org.swathbook.cli.json.PlanJson;
import org.swathbook.cli.json.RulesJson;
import org.swathbook.cli.json.SeasonJson;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.rules.RuleBook;

/** A document of every command, which together hold every key that can occur. */
final class SampleDocuments {
  private SampleDocuments() {}

  static Map<String, String> byCommand() {
    Book book = Samples.book();
    ReportHead head = ReportHead.of(book, book.fields(), Samples.TODAY);
    return Map.of(
        "plan",
        PlanJson.of(
            book,
            head,
            List.of(
                SamplePlans.recommended().timed(5),
                SamplePlans.notRecommended(),
                SamplePlans.refused())),
        "season",
        SeasonJson.of(
            book, head, Samples.field(), Samples.outcome("Sample", 3), SampleJudgement.of()),
        "rules",
        RulesJson.of(RuleBook.pages(), RuleBook.toCome()));
  }
}
