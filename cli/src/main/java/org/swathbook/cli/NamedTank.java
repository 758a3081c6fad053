package org.swathbook.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A tank by the name of its mix, by a pass of a program or by its products. */
final class NamedTank {
  @Parameters(
      arity = "0..*",
      paramLabel = "MIX",
      description =
          "A file, else a name in the folder mixes of the book; with --pass in the folder programs;"
              + " with --field the products and adjuvants, each with its rate.")
  List<String> words = List.of();

  @Option(names = "--pass", paramLabel = "N", description = "Pass of the program named, from 1.")
  @Nullable Integer pass;
}
