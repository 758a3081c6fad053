package org.swathbook.cli;

import java.time.LocalDate;
import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.book.file.WrittenProgram;
import org.swathbook.cli.report.KeptField;
import org.swathbook.cli.work.PassTimes;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.Effort;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.plan.keep.Keeping;
import org.swathbook.plan.keep.Kept;
import org.swathbook.plan.keep.KeptWithout;
import org.swathbook.program.FieldId;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** A written program that is to change as little as possible. */
final class KeepOption {
  private final CommandSpec command;
  private final Value<String> typed;

  KeepOption(CommandSpec command) {
    this.command = command;
    typed =
        Value.option(
            command,
            "--keep",
            "PROGRAM",
            String.class,
            "Keep to a program, a file or a name in the folder programs of the book, and change as"
                + " little of it as may be: when a product cannot be had (--without), planting"
                + " slips (plantDate in fields.csv), or the journal has passes that were made"
                + " otherwise.");
  }

  boolean isGiven() {
    return typed.isGiven();
  }

  /**
   * Reads the program.
   *
   * @param named ids of fields as typed, none or that of the program
   */
  WrittenProgram read(Book book, BookPaths paths, List<String> named, List<Field> fields) {
    String word = typed.required();
    WrittenProgram written =
        ProgramReader.readWritten(paths.find(BookPaths.Kind.PROGRAM, word), paths, book);
    FieldId field = written.program().field();
    boolean isOfField = fields.size() == 1 && fields.get(0).id().equals(field);
    if (!named.isEmpty() && !isOfField) {
      throw new ParameterException(
          command.commandLine(),
          "the program " + word + " is one of " + field + "; name that field or none");
    }
    return written;
  }

  /**
   * Finds the changes that it needs, and plans its field anew to hold it against.
   *
   * @param effort what the new plan takes; the changes are looked for as ever
   * @throws org.swathbook.source.ProblemsException with every pass whose time does not come
   */
  KeptField keep(
      Book book,
      Field field,
      WrittenProgram written,
      PlanWishes wishes,
      Effort effort,
      LocalDate today) {
    TraceSet traces = TraceBuilder.build(book, field, today);
    PassTimes.check(written, traces, book.house().sizePercentile());
    Kept kept = Keeping.of(book, traces, written.program(), wishes, today, effort);
    return new KeptField(
        field,
        typed.required(),
        kept,
        kept.programs().isEmpty()
            ? KeptWithout.of(book, traces, written.program(), wishes, today)
            : List.of(),
        effort);
  }
}
