package org.swathbook.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.file.BookLoader;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.check.CatalogImpact;
import org.swathbook.cli.json.ImpactJson;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.terminal.ExitCode;
import org.swathbook.cli.text.ImpactText;
import org.swathbook.program.Program;
import picocli.CommandLine.Model.CommandSpec;

/** Shows what of a book a changed catalog breaks. */
final class CatalogImpactCommand implements Callable<Integer> {
  final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
  private final Value<String> one;
  private final Value<String> other;
  private final BookOption bookOption;
  private final TodayOption todayOption;
  private final OutputOption output;

  CatalogImpactCommand() {
    spec.name("impact")
        .usageMessage()
        .description(
            "Judges the saved programs and this season's journal of a book under two catalogs and"
                + " names every rule whose word changes.",
            "Catalogs are named as in 'catalog diff'.",
            "For example: catalog impact starter my-book/catalog --book my-book");
    one = Value.requiredPositional(spec, "A", String.class, "The catalog before.");
    other = Value.requiredPositional(spec, "B", String.class, "The catalog after.");
    bookOption = new BookOption(spec);
    todayOption = new TodayOption(spec);
    output = new OutputOption(spec);
  }

  @Override
  public Integer call() {
    LocalDate today = todayOption.read();
    BookPaths paths = bookOption.paths();
    Book before = load(paths, one.required());
    Book after = load(paths, other.required());
    List<CatalogImpact.Hit> hits = new ArrayList<>();
    for (Path file : paths.programs()) {
      Program was = ProgramReader.read(file, paths, before);
      Program is = ProgramReader.read(file, paths, after);
      Field field = after.findField(is.field().value()).orElseThrow();
      hits.addAll(CatalogImpact.ofProgram(before, after, field, was, is, today));
    }
    for (Field field : after.fields()) {
      hits.addAll(CatalogImpact.ofJournal(before, after, field));
    }
    ReportHead head = ReportHead.of(after, after.fields(), today);
    output.print(output.json() ? ImpactJson.of(head, hits) : ImpactText.of(after, head, hits));
    return ExitCode.DONE;
  }

  private Book load(BookPaths paths, String catalog) {
    return new BookLoader().load(paths.book(), NamedCatalog.of(catalog, spec));
  }
}
