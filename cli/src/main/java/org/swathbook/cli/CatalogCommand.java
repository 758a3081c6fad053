package org.swathbook.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Looks into the catalog; the work is done by the commands below it. */
@Command(
    addMethodSubcommands = false,
    name = "catalog",
    description = {
      "Shows and reviews the catalog of ingredients, products, weeds and crops.",
      "For example: catalog show dicamba"
    },
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {
      CatalogListCommand.class,
      CatalogShowCommand.class,
      CatalogLintCommand.class,
      CatalogDiffCommand.class,
      CatalogImpactCommand.class,
      CatalogSchemaCommand.class
    })
final class CatalogCommand implements Runnable {
  @Spec CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "a command is missing: " + String.join(", ", spec.subcommands().keySet()));
  }
}
