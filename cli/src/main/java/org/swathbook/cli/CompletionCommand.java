package org.swathbook.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Teaches a shell the names of commands and options. */
@Command(
    addMethodSubcommands = false,
    name = "completion",
    description = {
      "Prints a script by which bash or zsh completes commands, options and files.",
      "For this shell: source <(cli/swathbook completion). For every shell to come: put its output into"
          + " a file that the shell's start-up reads.",
      "For example: completion"
    })
final class CompletionCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Override
  public Integer call() {
    spec.commandLine()
        .getOut()
        .print(AutoComplete.bash(spec.root().name(), spec.root().commandLine()));
    spec.commandLine().getOut().flush();
    return ExitCode.DONE;
  }
}
