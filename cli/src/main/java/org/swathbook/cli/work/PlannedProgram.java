package org.swathbook.cli.work;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.swathbook.audit.PlanAgainstJournal;
import org.swathbook.audit.PlannedAndApplied;
import org.swathbook.book.Book;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.book.file.WrittenProgram;
import org.swathbook.source.Mark;
import org.swathbook.source.Problems;

/** The program of {@code audit --planned}, read with the book of the season it was for. */
public final class PlannedProgram {
  private static final Mark PLANNED = Mark.startOf("--planned");

  private final BookPaths paths;
  private final Book book;

  public PlannedProgram(BookPaths paths, Book book) {
    this.paths = paths;
    this.book = book;
  }

  /**
   * @param more other reports or fields were asked for too
   */
  public PlannedAndApplied compare(@Nullable String name, @Nullable Integer asked, boolean more) {
    Problems problems = new Problems();
    if (name == null) {
      problems.add(
          Mark.startOf("--season"),
          "a season belongs to a program",
          "name the program with --planned PROGRAM");
    }
    if (more) {
      problems.add(
          PLANNED,
          "a program has its own field, and --ledger and --what-if are other reports",
          "ask for one of them");
    }
    problems.throwIfAny();
    Path file = paths.find(BookPaths.Kind.PROGRAM, String.valueOf(name));
    int season = asked != null ? asked : lastSeason(problems);
    problems.throwIfAny();
    Book then = PlanAgainstJournal.bookOf(book, season);
    if (then.fields().isEmpty()) {
      problems.add(
          Mark.startOf("--season"),
          "seasons.csv has no row of " + season,
          "write the year of a harvest that it has, or of the book's own season " + book.season());
    }
    problems.throwIfAny();
    WrittenProgram written = ProgramReader.readWritten(file, paths, then);
    PassTimes.checkWeeds(written, then);
    PlanAgainstJournal.Result result = PlanAgainstJournal.of(book, season, written.program());
    if (result.compared().isEmpty()) {
      problems.add(
          PLANNED,
          "the season " + season + " cannot be compared: " + String.join("; ", result.why()),
          "name another season with --season");
    }
    problems.throwIfAny();
    return result.compared().orElseThrow();
  }

  /** Of all fields: which field the program is for stands in a file that is read by its season. */
  private int lastSeason(Problems problems) {
    Optional<Integer> last =
        book.fields().stream()
            .flatMap(f -> PlanAgainstJournal.lastSeason(book, f.id()).stream())
            .max(Integer::compare);
    if (last.isEmpty()) {
      problems.add(PLANNED, "the journal has no season yet", "record what was sprayed first");
    }
    return last.orElse(book.season());
  }
}
