package org.swathbook.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** An option that is given or is not. */
final class Flag {
  private final OptionSpec option;

  private Flag(OptionSpec option) {
    this.option = option;
  }

  /** Adds one to a command. */
  static Flag option(CommandSpec command, String name, String description) {
    return option(command, OptionSpec.builder(name).description(description));
  }

  /**
   * The same of one that is more than its name and description.
   *
   * @param option all about it but that it takes no value
   */
  static Flag option(CommandSpec command, OptionSpec.Builder option) {
    OptionSpec made = option.type(boolean.class).initialValue(false).build();
    command.addOption(made);
    return new Flag(made);
  }

  boolean isGiven() {
    return Boolean.TRUE.equals(option.getValue());
  }
}
