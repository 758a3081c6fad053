package org.swathbook.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Looks into the catalog; the work is done by the commands below it. */
final class CatalogCommand implements Runnable {
  final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);

  CatalogCommand() {
    spec.name("catalog")
        .usageMessage()
        .description(
            "Shows and reviews the catalog of ingredients, products, weeds and crops.",
            "For example: catalog show dicamba")
        .synopsisSubcommandLabel("COMMAND");
    spec.addSubcommand(null, new CatalogListCommand().spec);
    spec.addSubcommand(null, new CatalogShowCommand().spec);
    spec.addSubcommand(null, new CatalogLintCommand().spec);
    spec.addSubcommand(null, new CatalogDiffCommand().spec);
    spec.addSubcommand(null, new CatalogImpactCommand().spec);
    spec.addSubcommand(null, new CatalogSchemaCommand().spec);
  }

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "a command is missing: " + String.join(", ", spec.subcommands().keySet()));
  }
}
