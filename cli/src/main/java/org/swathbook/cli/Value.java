package org.swathbook.cli;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * What a call gives at most once: the value of an option, or a word that stands by itself.
 *
 * @param <T> what the text is read as
 */
final class Value<T> {
  private final ArgSpec arg;

  private Value(CommandSpec command, ArgSpec arg) {
    this.arg = arg;
    command.add(arg);
  }

  /** Adds an option to a command. */
  static <T> Value<T> option(
      CommandSpec command, String name, String label, Class<T> type, String description) {
    return new Value<>(command, option(name, label, type, description).build());
  }

  /** The same where the library cannot read the value, or reads it too kindly. */
  static <T> Value<T> option(
      CommandSpec command,
      String name,
      String label,
      Class<T> type,
      ITypeConverter<T> reader,
      String description) {
    return new Value<>(command, option(name, label, type, description).converters(reader).build());
  }

  /** Adds an option that no call may leave out. */
  static <T> Value<T> requiredOption(
      CommandSpec command, String name, String label, Class<T> type, String description) {
    return new Value<>(command, option(name, label, type, description).required(true).build());
  }

  /** Adds the next word that stands by itself. */
  static <T> Value<T> positional(
      CommandSpec command, String label, Class<T> type, String description) {
    return new Value<>(command, nextWord(command, label, type, description).arity("0..1").build());
  }

  /** The same where the library cannot read the word, or reads it too kindly. */
  static <T> Value<T> positional(
      CommandSpec command,
      String label,
      Class<T> type,
      ITypeConverter<T> reader,
      String description) {
    return new Value<>(
        command,
        nextWord(command, label, type, description).arity("0..1").converters(reader).build());
  }

  /** Adds the next word that stands by itself, which no call may leave out. */
  static <T> Value<T> requiredPositional(
      CommandSpec command, String label, Class<T> type, String description) {
    return new Value<>(command, nextWord(command, label, type, description).required(true).build());
  }

  private static OptionSpec.Builder option(
      String name, String label, Class<?> type, String description) {
    OptionSpec.Builder out =
        OptionSpec.builder(name).paramLabel(label).type(type).description(description);
    if (type == Double.class) {
      out.converters(new NumberReader());
    } else if (type == Integer.class) {
      out.converters(new NumberReader.Whole());
    }
    return out;
  }

  private static PositionalParamSpec.Builder nextWord(
      CommandSpec command, String label, Class<?> type, String description) {
    return PositionalParamSpec.builder()
        .index(Integer.toString(command.positionalParameters().size()))
        .paramLabel(label)
        .type(type)
        .description(description);
  }

  boolean isGiven() {
    return value() != null;
  }

  /** Null when the call left it out. */
  @Nullable T value() {
    return arg.getValue();
  }

  /** The value, or what stands for it when the call left it out. */
  T or(T leftOut) {
    T given = value();
    return given != null ? given : leftOut;
  }

  /** The value of what no call may leave out. */
  T required() {
    return Objects.requireNonNull(value());
  }
}
