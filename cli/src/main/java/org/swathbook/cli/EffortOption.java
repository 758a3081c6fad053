package org.swathbook.cli;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.swathbook.plan.Effort;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.TypeConversionException;

/** How much is looked at before a plan is shown, or before the planner's own program is used. */
final class EffortOption {
  private final Value<Effort> effort;

  EffortOption(CommandSpec command) {
    effort =
        Value.option(
            command,
            "--effort",
            "WORD",
            Effort.class,
            new Word(),
            "quick: a first look at many fields, which may miss the better programs. usual: when"
                + " left out. thorough: some four times as long as usual, for a field or two; a plan"
                + " then also proves by how much any program may net more at most.");
  }

  Effort effort() {
    return effort.or(Effort.USUAL);
  }

  boolean isGiven() {
    return effort.isGiven();
  }

  static final class Word implements ITypeConverter<Effort> {
    @Override
    public Effort convert(String word) {
      return Arrays.stream(Effort.values())
          .filter(e -> word(e).equals(word))
          .findFirst()
          .orElseThrow(
              () ->
                  new TypeConversionException(
                      "'"
                          + word
                          + "' is no effort; one of "
                          + Arrays.stream(Effort.values())
                              .map(EffortOption::word)
                              .collect(Collectors.joining(", "))));
    }
  }

  private static String word(Effort effort) {
    return effort.name().toLowerCase(Locale.ROOT);
  }
}
