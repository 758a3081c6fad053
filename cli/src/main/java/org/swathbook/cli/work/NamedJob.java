package org.swathbook.cli.work;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.swathbook.book.Book;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.MixReader;
import org.swathbook.book.file.MixWords;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.program.Program;
import org.swathbook.program.SprayJob;
import org.swathbook.source.Mark;
import org.swathbook.source.ProblemsException;

/**
 * A spraying as a call names it: a mix of the book, a pass of a program, or products typed there.
 *
 * @param source where its facts stand, for what is told of them
 * @param name what somebody would call it; empty for what was typed
 */
public record NamedJob(SprayJob job, String source, String name) {

  /** A mix: a file, else a name in the folder mixes. */
  public static NamedJob mix(Book book, BookPaths paths, String name) {
    Path file = paths.find(BookPaths.Kind.MIX, name);
    String source = paths.nameOf(file);
    return new NamedJob(MixReader.read(file, paths, book), source, plain(source));
  }

  /**
   * One pass of a program, a file or a name in the folder programs.
   *
   * @param number from 1
   * @throws ProblemsException when the program has no such pass
   */
  public static NamedJob pass(Book book, BookPaths paths, String name, int number, LocalDate date) {
    Path file = paths.find(BookPaths.Kind.PROGRAM, name);
    Program program = ProgramReader.read(file, paths, book);
    String source = paths.nameOf(file);
    if (number < 1 || number > program.passes().size()) {
      throw ProblemsException.of(
          Mark.startOf("--pass"),
          source + " has no pass " + number,
          "write 1 to " + program.passes().size());
    }
    SprayJob job = SprayJob.of(program.field(), date, program.passes().get(number - 1).mix());
    return new NamedJob(job, source, plain(source) + " pass " + number);
  }

  /**
   * Products and adjuvants, each with its rate.
   *
   * @param source what to call them, since no file holds them
   */
  public static NamedJob typed(
      Book book,
      String field,
      LocalDate date,
      OptionalDouble gallonsPerAcre,
      List<String> parts,
      String source) {
    return new NamedJob(MixWords.read(book, field, date, gallonsPerAcre, parts), source, "");
  }

  private static String plain(String file) {
    String name = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
    return name.endsWith(".yaml") ? name.substring(0, name.length() - 5) : name;
  }
}
