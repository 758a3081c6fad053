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
import org.swathbook.source.NewFiles;
import org.swathbook.source.ProblemsException;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** A result as a table for a spreadsheet or as a page, in place of text. */
final class SheetOptions {
  private final Value<Path> csv;
  private final Value<Path> xlsx;
  private final Value<Path> html;
  private final Flag force;

  SheetOptions(CommandSpec command) {
    csv =
        Value.option(
            command,
            "--csv",
            "FILE",
            Path.class,
            "Write the lines as CSV into this file, in place of text.");
    xlsx =
        Value.option(
            command,
            "--xlsx",
            "FILE",
            Path.class,
            "Write a workbook into this file, in place of text.");
    html =
        Value.option(
            command,
            "--html",
            "FILE",
            Path.class,
            "Write a page to print into this file, in place of text.");
    force =
        Flag.option(
            command, "--force", "With --csv, --xlsx or --html: write over a file that is there.");
  }

  @Nullable Path csv() {
    return csv.value();
  }

  @Nullable Path xlsx() {
    return xlsx.value();
  }

  @Nullable Path html() {
    return html.value();
  }

  boolean isGiven() {
    return !files().isEmpty();
  }

  /** Looks before the work whether the call makes sense and the files can be written. */
  void check(CommandLine command, boolean json) {
    if (isGiven() && json) {
      throw new ParameterException(
          command, "--csv, --xlsx and --html write a file in place of --json");
    }
    if (force.isGiven() && !isGiven()) {
      throw new ParameterException(
          command, "--force means nothing without --csv, --xlsx or --html");
    }
    if (isOneNamedTwice(files())) {
      throw new ParameterException(command, "two of --csv, --xlsx and --html name the same file");
    }
    for (Path file : files()) {
      HtmlOption.checkFree(file, force.isGiven());
    }
  }

  /** Whether two of the names lead to one file, however they are written. */
  static boolean isOneNamedTwice(List<Path> files) {
    for (int i = 1; i < files.size(); i++) {
      Path last = files.get(i);
      if (files.subList(0, i).stream().anyMatch(f -> NewFiles.isSame(f, last))) {
        return true;
      }
    }
    return false;
  }

  /**
   * The bytes of the workbook, when one is wanted.
   *
   * @throws ProblemsException when the system has no room for it while it is put together
   */
  Optional<byte[]> workbook(Supplier<byte[]> made) {
    if (xlsx.value() == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(made.get());
    } catch (UncheckedIOException e) {
      throw ProblemsException.of(
          Mark.startOf(xlsx.value().toString()),
          e.getMessage() + ", and the file is not written",
          "check that folder and its disk");
    }
  }

  /** What is to be written, in its order. */
  List<Path> files() {
    return Stream.of(csv.value(), xlsx.value(), html.value()).filter(Objects::nonNull).toList();
  }
}
