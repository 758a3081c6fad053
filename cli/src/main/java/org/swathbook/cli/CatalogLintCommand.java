package org.swathbook.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.swathbook.book.file.CatalogPlace;
import org.swathbook.catalog.review.Lint;
import org.swathbook.catalog.review.Remark;
import org.swathbook.cli.json.LintJson;
import org.swathbook.cli.terminal.ExitCode;
import org.swathbook.cli.text.LintText;
import org.swathbook.source.ProblemsException;
import picocli.CommandLine.Model.CommandSpec;

/** Looks a catalog over for its keeper. */
final class CatalogLintCommand implements Callable<Integer> {
  final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
  private final Flag starter;
  private final CatalogOption catalog;
  private final TodayOption todayOption;
  private final OutputOption output;

  CatalogLintCommand() {
    spec.name("lint")
        .usageMessage()
        .description(
            "Finds contradictions in the catalog, and what its keeper should see to.",
            "Of a book it reviews the book's own files; of the starter all, as with --starter.",
            "For example: catalog lint --book our-book");
    starter = Flag.option(spec, "--starter", "Review the files of the starter catalog too.");
    catalog = new CatalogOption(spec);
    todayOption = new TodayOption(spec);
    output = new OutputOption(spec);
  }

  @Override
  public Integer call() {
    LocalDate today = todayOption.read();
    CatalogPlace place = catalog.place();
    List<Remark> remarks = remarks(place, today);
    output.print(output.json() ? LintJson.of(today, remarks) : LintText.of(today, remarks));
    boolean errors = remarks.stream().anyMatch(r -> r.severity() == Remark.Severity.ERROR);
    return errors ? ExitCode.BLOCKED : ExitCode.DONE;
  }

  /** What keeps a catalog from being read at all is an error like any other here. */
  private List<Remark> remarks(CatalogPlace place, LocalDate today) {
    try {
      boolean all = starter.isGiven() || place.folder().isEmpty();
      return Lint.remarks(CatalogOption.load(place), today).stream()
          .filter(r -> all || !r.problem().mark().file().startsWith("starter/"))
          .toList();
    } catch (ProblemsException e) {
      return e.problems().stream().map(p -> new Remark(Remark.Severity.ERROR, p)).toList();
    }
  }
}
