package org.swathbook.cli;

import java.util.List;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** What a call may give more than once: the values of an option, or words by themselves. */
final class Words {
  private final ArgSpec arg;

  private Words(CommandSpec command, ArgSpec arg) {
    this.arg = arg;
    command.add(arg);
  }

  /** Adds an option to a command, with one word each time that it is given. */
  static Words option(CommandSpec command, String name, String label, String description) {
    return new Words(command, option(name, label, description).build());
  }

  /** Adds an option that takes all words up to the next option. */
  static Words optionOfMany(CommandSpec command, String name, String label, String description) {
    return new Words(command, option(name, label, description).arity("1..*").build());
  }

  private static OptionSpec.Builder option(String name, String label, String description) {
    return OptionSpec.builder(name)
        .paramLabel(label)
        .type(List.class)
        .auxiliaryTypes(String.class)
        .initialValue(List.of())
        .description(description);
  }

  /** Adds all words that stand by themselves. */
  static Words positional(CommandSpec command, String label, String description) {
    return new Words(
        command,
        PositionalParamSpec.builder()
            .paramLabel(label)
            .arity("0..*")
            .type(List.class)
            .auxiliaryTypes(String.class)
            .initialValue(List.of())
            .description(description)
            .build());
  }

  boolean isGiven() {
    return !all().isEmpty();
  }

  /** In the order of the call; none when the call left them out. */
  List<String> all() {
    return arg.getValue();
  }
}
