package org.swathbook.cli;

import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.swathbook.catalog.file.CatalogLoader;
import picocli.CommandLine;

/** One call of the program inside the test: its exit code and what it wrote. */
record Called(int code, String out, String err) {

  static Called with(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        Main.run(Main.commandLine(new PrintWriter(out), new PrintWriter(err, true), args), args);
    return new Called(code, out.toString(), err.toString());
  }

  /**
   * Many calls that share what they know of the starter catalog, which no book changes.
   *
   * @param catalogs reads the catalogs of books
   */
  static Called sharing(CatalogLoader catalogs, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine program =
        Main.commandLine(
            new PrintWriter(out), new PrintWriter(err, true), Reader.nullReader(), catalogs, args);
    return new Called(Main.run(program, args), out.toString(), err.toString());
  }

  /** Where somebody, or a pipe, answers questions. */
  static Called answering(String answers, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine program =
        Main.commandLine(
            new PrintWriter(out),
            new PrintWriter(err, true),
            new StringReader(answers),
            new CatalogLoader(),
            args);
    return new Called(Main.run(program, args), out.toString(), err.toString());
  }

  /** What was said beside the result, less how far the work is: that depends on the machine. */
  String complaints() {
    return err.lines().filter(l -> !l.contains(" …")).collect(Collectors.joining("\n"));
  }

  /** On a book, with the day fixed. */
  static Called with(String command, Path book, String... more) {
    List<String> args = new ArrayList<>(List.of(command));
    args.addAll(List.of(more));
    args.addAll(List.of("--book", book.toString(), "--today", "2027-03-01"));
    return with(args.toArray(String[]::new));
  }
}
