package org.swathbook.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;

/** A tank by the name of its mix, by a pass of a program or by its products. */
final class NamedTank {
  private final Words words;
  private final Value<Integer> pass;

  NamedTank(CommandSpec command) {
    words =
        Words.positional(
            command,
            "MIX",
            "A file, else a name in the folder mixes of the book; with --pass in the folder"
                + " programs; with --field the products and adjuvants, each with its rate.");
    pass =
        Value.option(command, "--pass", "N", Integer.class, "Pass of the program named, from 1.");
  }

  List<String> words() {
    return words.all();
  }

  @Nullable Integer pass() {
    return pass.value();
  }
}
