package org.swathbook.cli;

import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.swathbook.source.Mark;
import org.swathbook.source.ProblemsException;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** A result as a table for a spreadsheet or as a page, in place of text. */
final class SheetOptions {
  @Option(
      names = "--csv",
      paramLabel = "FILE",
      description = "Write the lines as CSV into this file, in place of text.")
  @Nullable Path csv;

  @Option(
      names = "--xlsx",
      paramLabel = "FILE",
      description = "Write a workbook into this file, in place of text.")
  @Nullable Path xlsx;

  @Option(
      names = "--html",
      paramLabel = "FILE",
      description = "Write a page to print into this file, in place of text.")
  @Nullable Path html;

  @Option(
      names = "--force",
      description = "With --csv, --xlsx or --html: write over a file that is there.")
  boolean force;

  boolean isGiven() {
    return !files().isEmpty();
  }

  /** Looks before the work whether the call makes sense and the files can be written. */
  void check(CommandLine command, boolean json) {
    if (isGiven() && json) {
      throw new ParameterException(
          command, "--csv, --xlsx and --html write a file in place of --json");
    }
    if (force && !isGiven()) {
      throw new ParameterException(
          command, "--force means nothing without --csv, --xlsx or --html");
    }
    if (files().stream().map(Path::toAbsolutePath).distinct().count() < files().size()) {
      throw new ParameterException(command, "two of --csv, --xlsx and --html name the same file");
    }
    for (Path file : files()) {
      HtmlOption.checkFree(file, force);
    }
  }

  /**
   * The bytes of the workbook, when one is wanted.
   *
   * @throws ProblemsException when the system has no room for it while it is put together
   */
  Optional<byte[]> workbook(Supplier<byte[]> made) {
    if (xlsx == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(made.get());
    } catch (UncheckedIOException e) {
      throw ProblemsException.of(
          Mark.startOf(xlsx.toString()),
          e.getMessage() + ", and the file is not written",
          "check that folder and its disk");
    }
  }

  private List<Path> files() {
    return Stream.of(csv, xlsx, html).filter(Objects::nonNull).toList();
  }
}
