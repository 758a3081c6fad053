package org.swathbook.cli;

import java.util.concurrent.Callable;
import org.swathbook.cli.terminal.ExitCode;
import picocli.AutoComplete;
import picocli.CommandLine.Model.CommandSpec;

/** Teaches a shell the names of commands and options, and where a book keeps its own. */
final class CompletionCommand implements Callable<Integer> {
  final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);

  CompletionCommand() {
    spec.name("completion")
        .usageMessage()
        .description(
            "Prints a script by which bash or zsh completes commands, options and files, and what"
                + " a book names: its fields, programs, mixes and observations.",
            "For this shell: source <(cli/swathbook completion). For every shell to come: put its"
                + " output into a file that the shell's start-up reads.",
            "For example: completion");
  }

  @Override
  public Integer call() {
    spec.commandLine()
        .getOut()
        .print(
            AutoComplete.bash(spec.root().name(), spec.root().commandLine())
                + BookCompletion.of(spec.root()));
    spec.commandLine().getOut().flush();
    return ExitCode.DONE;
  }
}
