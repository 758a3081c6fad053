package org.swathbook.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.TypeConversionException;

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
    OptionSpec made =
        option.type(boolean.class).initialValue(false).converters(new NoValue()).build();
    command.addOption(made);
    return new Flag(made);
  }

  boolean isGiven() {
    return Boolean.TRUE.equals(option.getValue());
  }

  /** What stands behind its equals sign, where somebody wrote one. */
  private static final class NoValue implements ITypeConverter<Boolean> {
    @Override
    public Boolean convert(String text) {
      if (text.equalsIgnoreCase("true") || text.equalsIgnoreCase("false")) {
        return text.equalsIgnoreCase("true");
      }
      throw new TypeConversionException("it takes no value, and '" + text + "' was given");
    }
  }
}
