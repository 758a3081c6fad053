package org.swathbook.cli;

import java.nio.file.Path;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;

/** What every report on a book takes: which book, for which day, and in which form. */
record ReportOptions(
    CommandSpec command, BookOption book, TodayOption today, HtmlOption html, OutputOption output) {

  static ReportOptions of(CommandSpec command) {
    return new ReportOptions(
        command,
        new BookOption(command),
        new TodayOption(command),
        new HtmlOption(command),
        new OutputOption(command));
  }

  boolean isPage() {
    return html.file() != null;
  }

  boolean isJson() {
    return output.json();
  }

  /** Looks before the work whether one form is asked for and its page can be written. */
  void checkForm() {
    html.check(command.commandLine(), isJson());
  }

  /** Prints the report in the form asked for, or writes its page; no other form is made. */
  void print(Supplier<String> page, Supplier<String> json, Supplier<String> text) {
    Path file = html.file();
    if (file != null) {
      output.print(HtmlOption.write(file, page.get()));
    } else {
      print(json, text);
    }
  }

  /** The same of a report that has no page. */
  void print(Supplier<String> json, Supplier<String> text) {
    output.print(isJson() ? json.get() : text.get());
  }
}
