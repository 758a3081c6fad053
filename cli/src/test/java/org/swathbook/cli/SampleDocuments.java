package org.swathbook.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.file.CatalogPlace;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.WrittenCatalog;
import org.swathbook.catalog.review.Change;
import org.swathbook.catalog.review.Lint;
import org.swathbook.catalog.review.Provenance;
import org.swathbook.cli.json.CatalogListJson;
import org.swathbook.cli.json.DiffJson;
import org.swathbook.cli.json.EntryJson;
import org.swathbook.cli.json.LintJson;
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
    WrittenCatalog catalog = CatalogOption.load(CatalogPlace.STARTER);
    return Map.of(
        "catalogList",
        CatalogListJson.of(catalog, null),
        "catalogSources",
        CatalogListJson.sources(Provenance.of(catalog)),
        "catalogShow",
        EntryJson.of(
            catalog.catalog(), catalog.find(EntryKind.INGREDIENT, "metribuzin").orElseThrow()),
        "catalogLint",
        LintJson.of(Samples.TODAY, Lint.remarks(catalog, Samples.TODAY)),
        "catalogDiff",
        DiffJson.of(
            "a",
            "b",
            List.of(new Change("crop", "corn", "", "name", Optional.of("x"), Optional.empty()))),
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
            book,
            head,
            Samples.field(),
            Samples.outcome("Sample", 3),
            SampleJudgement.of(),
            SampleStress.results()),
        "rules",
        RulesJson.of(RuleBook.pages()));
  }
}
