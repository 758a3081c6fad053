package org.swathbook.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
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
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows what of a book a changed catalog breaks. */
@Command(
    addMethodSubcommands = false,
    name = "impact",
    description = {
      "Judges the saved programs and this season's journal of a book under two catalogs and names"
          + " every rule whose word changes.",
      "Catalogs are named as in 'catalog diff'.",
      "For example: catalog impact starter my-book/catalog --book my-book"
    })
final class CatalogImpactCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Parameters(index = "0", paramLabel = "A", description = "The catalog before.")
  @Nullable String one;

  @Parameters(index = "1", paramLabel = "B", description = "The catalog after.")
  @Nullable String other;

  @Mixin BookOption bookOption = new BookOption();
  @Mixin TodayOption todayOption = new TodayOption();
  @Mixin OutputOption output = new OutputOption();

  @Override
  public Integer call() {
    LocalDate today = todayOption.read();
    BookPaths paths = bookOption.paths();
    Book before = load(paths, String.valueOf(one));
    Book after = load(paths, String.valueOf(other));
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
    output.print(output.json ? ImpactJson.of(head, hits) : ImpactText.of(after, head, hits));
    return ExitCode.DONE;
  }

  private Book load(BookPaths paths, String catalog) {
    Path folder = paths.book().toString().isEmpty() ? Path.of(".") : paths.book();
    return new BookLoader().load(folder, NamedCatalog.of(catalog, spec));
  }
}
