package org.swathbook.cli;

import org.swathbook.cli.terminal.Colour;
import picocli.CommandLine.Model.CommandSpec;

/** In which form a command prints its result. */
final class OutputOption {
  private final CommandSpec command;
  private final Flag json;

  OutputOption(CommandSpec command) {
    this.command = command;
    json = Flag.option(command, "--json", "Print the result as JSON, for scripts.");
  }

  boolean json() {
    return json.isGiven();
  }

  /** Prints the whole result; its last line is already ended. */
  void print(String result) {
    boolean coloured =
        !json.isGiven() && command.root().commandLine().getColorScheme().ansi().enabled();
    command.commandLine().getOut().print(coloured ? Colour.of(result) : result);
    command.commandLine().getOut().flush();
  }
}
