package org.swathbook.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** A result as a table for a spreadsheet, in place of text. */
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

  @Option(names = "--force", description = "With --csv or --xlsx: write over a file that is there.")
  boolean force;

  boolean isGiven() {
    return csv != null || xlsx != null;
  }

  /** Looks before the work whether the call makes sense and the files can be written. */
  void check(CommandLine command, boolean json) {
    if (isGiven() && json) {
      throw new ParameterException(command, "--csv and --xlsx write a file in place of --json");
    }
    if (force && !isGiven()) {
      throw new ParameterException(command, "--force means nothing without --csv or --xlsx");
    }
    if (csv != null && xlsx != null && csv.toAbsolutePath().equals(xlsx.toAbsolutePath())) {
      throw new ParameterException(command, "--csv and --xlsx name the same file");
    }
    for (Path file : files()) {
      HtmlOption.checkFree(file, force);
    }
  }

  private List<Path> files() {
    return Stream.of(csv, xlsx).filter(Objects::nonNull).toList();
  }
}
