package org.swathbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedWriter;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import picocli.CommandLine;

/** Where the program starts and ends: the one place that touches the process's own streams. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    PrintWriter out =
        new PrintWriter(new BufferedWriter(new OutputStreamWriter(System.out, UTF_8)));
    PrintWriter err = new PrintWriter(new OutputStreamWriter(System.err, UTF_8), true);
    int code = run(out, err, args);
    // A result that never reached its reader (a full disk, say) must not pass for done.
    if (out.checkError() && code == ExitCode.DONE) {
      err.println("swathbook: the result could not be written to standard output");
      code = ExitCode.OUR_FAULT;
    }
    err.flush();
    System.exit(code);
  }

  /**
   * Runs one command line.
   *
   * @param out takes the result and nothing else
   * @param err takes complaints and progress
   * @return the exit code, see {@link ExitCode}
   */
  static int run(PrintWriter out, PrintWriter err, String... args) {
    CommandLine root = new CommandLine(new Swathbook());
    root.setOut(out);
    root.setErr(err);
    root.setCaseInsensitiveEnumValuesAllowed(true);
    root.setUsageHelpWidth(100);
    root.setParameterExceptionHandler(Complaints::wrongCall);
    root.setExecutionExceptionHandler((e, at, parsed) -> Complaints.ourFault(e, root));
    try {
      return root.execute(args);
    } catch (RuntimeException | Error e) {
      // What the library lets through: errors such as exhausted memory or stack.
      return Complaints.ourFault(e, root);
    }
  }
}
