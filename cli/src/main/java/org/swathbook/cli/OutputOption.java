package org.swathbook.cli;

import org.swathbook.cli.terminal.Colour;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** In which form a command prints its result. */
final class OutputOption {
  @Spec(Spec.Target.MIXEE)
  CommandSpec spec;

  @Option(names = "--json", description = "Print the result as JSON, for scripts.")
  boolean json;

  /** Prints the whole result; its last line is already ended. */
  void print(String result) {
    boolean coloured = !json && spec.root().commandLine().getColorScheme().ansi().enabled();
    spec.commandLine().getOut().print(coloured ? Colour.of(result) : result);
    spec.commandLine().getOut().flush();
  }
}
