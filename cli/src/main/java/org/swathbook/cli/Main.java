package org.swathbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Reader;
import org.swathbook.catalog.file.CatalogLoader;
import org.swathbook.cli.terminal.Colour;
import org.swathbook.cli.terminal.ResultStream;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** Where the program starts and ends: the one place that touches the process's own streams. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    ResultStream result = new ResultStream(new FileOutputStream(FileDescriptor.out));
    PrintWriter out = new PrintWriter(new BufferedWriter(new OutputStreamWriter(result, UTF_8)));
    PrintWriter err = new PrintWriter(new OutputStreamWriter(System.err, UTF_8), true);
    Reader answers = new BufferedReader(new InputStreamReader(System.in, UTF_8));
    CatalogLoader catalogs =
        Swathbook.readsBook(args) ? CatalogLoader.ahead() : new CatalogLoader();
    CommandLine root = commandLine(out, err, answers, catalogs, args);
    if (Colour.wanted(isTerminal(), System.getenv())) {
      root.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.ON));
    }
    int code = run(root, args);
    out.flush();
    code = result.codeAfterwards(code, err);
    err.flush();
    System.exit(code);
  }

  /**
   * From Java 22 on there is a console without a terminal too, and a question to tell them apart.
   */
  @SuppressWarnings("SystemConsoleNull")
  private static boolean isTerminal() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (NoSuchMethodException e) {
      return true;
    } catch (ReflectiveOperationException e) {
      return false;
    }
  }

  /**
   * The program as a library object.
   *
   * @param out takes the result and nothing else
   * @param err takes complaints and progress
   * @param args what it will be called with; without any it knows every command
   */
  static CommandLine commandLine(PrintWriter out, PrintWriter err, String... args) {
    return commandLine(out, err, Reader.nullReader(), new CatalogLoader(), args);
  }

  /**
   * The same where questions can be answered.
   *
   * @param answers lines of whoever called
   * @param catalogs reads the catalogs of books
   */
  static CommandLine commandLine(
      PrintWriter out, PrintWriter err, Reader answers, CatalogLoader catalogs, String... args) {
    keepToWhatIsUsed();
    CommandLine root = new CommandLine(new Swathbook(answers, catalogs).spec);
    // Before what follows, which is handed down to the commands that are there.
    // And in a plain loop: Java would take a class of this age out of its archive for a method of
    // it that is handed on.
    for (CommandSpec command : Swathbook.commandsFor(args)) {
      root.addSubcommand(command);
    }
    root.setOut(out);
    root.setErr(err);
    root.setCaseInsensitiveEnumValuesAllowed(true);
    root.setUsageHelpWidth(100);
    root.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    Complaints complaints = new Complaints(root);
    root.setParameterExceptionHandler(complaints);
    root.setExecutionExceptionHandler(complaints);
    return root;
  }

  /**
   * The library looks for Groovy, and looks up how each class of dates, times and databases would
   * be read. No option here is read in such a way (days have {@link TodayOption.IsoDate}), and a
   * short command would wait for it.
   */
  private static void keepToWhatIsUsed() {
    System.setProperty("picocli.disable.closures", "true");
    System.setProperty("picocli.converters.excludes", "java.[st].*");
  }

  /**
   * Runs one command line.
   *
   * @return the exit code, see {@link org.swathbook.cli.terminal.ExitCode}
   */
  static int run(CommandLine root, String... args) {
    try {
      return root.execute(args);
    } catch (RuntimeException | Error e) {
      // What the library lets through: errors such as exhausted memory or stack.
      return Complaints.ourFault(e, root);
    }
  }
}
