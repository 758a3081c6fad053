package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.OverwrittenOptionException;

/** What a call gives an option, and what is there when it gives nothing. */
class ValueTest {
  private final CommandSpec spec = CommandSpec.create().name("try");
  private final Value<Path> first = Value.requiredPositional(spec, "A", Path.class, "");
  private final Value<String> second = Value.positional(spec, "B", String.class, "");
  private final Value<Integer> number = Value.option(spec, "--n", "N", Integer.class, "");
  private final Words names = Words.option(spec, "--name", "NAME", "");
  private final Words many = Words.optionOfMany(spec, "--many", "NAME", "");
  private final Flag flag = Flag.option(spec, "--flag", "");
  private final CommandLine command = new CommandLine(spec);

  @Test
  void everyOptionTakesItsOwn() {
    command.parseArgs(
        "one", "two", "--n", "3", "--flag", "--name", "x", "--many", "p", "q", "--name=y");
    assertThat(first.required()).isEqualTo(Path.of("one"));
    assertThat(second.value()).isEqualTo("two");
    assertThat(number.or(7)).isEqualTo(3);
    assertThat(names.all()).containsExactly("x", "y");
    assertThat(many.all()).containsExactly("p", "q");
    assertThat(flag.isGiven()).isTrue();
  }

  /** A program that is called again knows nothing of the call before. */
  @Test
  void theNextCallStartsAnew() {
    command.parseArgs("one", "two", "--n", "3", "--flag", "--name", "x", "--many", "p");
    command.parseArgs("three");
    assertThat(first.required()).isEqualTo(Path.of("three"));
    assertThat(second.isGiven()).isFalse();
    assertThat(second.value()).isNull();
    assertThat(number.or(7)).isEqualTo(7);
    assertThat(List.of(names, many)).allMatch(w -> !w.isGiven() && w.all().isEmpty());
    assertThat(flag.isGiven()).isFalse();
  }

  @Test
  void whatIsRequiredIsMissedAndWhatIsGivenTwiceIsRefused() {
    assertThatThrownBy(() -> command.parseArgs())
        .isInstanceOf(MissingParameterException.class)
        .hasMessage("Missing required parameter: 'A'");
    assertThatThrownBy(() -> command.parseArgs("one", "--n", "1", "--n", "2"))
        .isInstanceOf(OverwrittenOptionException.class);
    Value.requiredOption(spec, "--must", "X", String.class, "");
    assertThatThrownBy(() -> command.parseArgs("one"))
        .isInstanceOf(MissingParameterException.class)
        .hasMessage("Missing required option: '--must=X'");
  }
}
