package org.swathbook.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.swathbook.source.Mark;
import org.swathbook.source.NewFiles;
import org.swathbook.source.ProblemsException;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** A page for the printer in place of text. */
final class HtmlOption {
  private final Value<Path> html;
  private final Flag force;

  HtmlOption(CommandSpec command) {
    html =
        Value.option(
            command,
            "--html",
            "FILE",
            Path.class,
            "Write a page to print, or to save as PDF from a browser, into this file, in place of"
                + " text.");
    force = Flag.option(command, "--force", "With --html: write over a file that is there.");
  }

  /** Null when text is to be printed. */
  @Nullable Path file() {
    return html.value();
  }

  boolean force() {
    return force.isGiven();
  }

  /** Looks before the work whether the call makes sense and the page can be written. */
  void check(CommandLine command, boolean json) {
    if (html.isGiven() ? json : force.isGiven()) {
      throw new ParameterException(
          command, "--html writes a page in place of --json; --force goes with --html");
    }
    checkFree();
  }

  /**
   * Looks before the work whether the page can be written.
   *
   * @throws ProblemsException when something stands in the way
   */
  void checkFree() {
    if (html.value() != null) {
      checkFree(html.value(), force.isGiven());
    }
  }

  /** The same of any page. */
  static void checkFree(Path html, boolean force) {
    NewFiles.check(html, html.toString());
    if (!force && Files.exists(html)) {
      throw ProblemsException.of(
          Mark.startOf(html.toString()),
          "there is such a file already",
          "write over it with --force");
    }
  }

  /**
   * Writes the page whole or not at all.
   *
   * @return what was done, a line
   */
  static String write(Path file, String page) {
    put(new NewFiles(), file, page).write();
    return written(file);
  }

  /** Takes a page among what is to be written. */
  static NewFiles put(NewFiles files, Path file, String page) {
    return files.put(file, file.toString(), page);
  }

  /** What is told once a file is written, a line. */
  static String written(Path file) {
    return "Written: " + file + "\n";
  }
}
