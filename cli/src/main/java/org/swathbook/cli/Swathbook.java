package org.swathbook.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The program's own options; the work is done by the commands below it. */
@Command(
    name = "swathbook",
    description = "Plans herbicide programs and checks tank mixes. The label is the law.",
    synopsisSubcommandLabel = "COMMAND",
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {
      "0:Done, and nothing that was asked about is blocked.",
      "1:Done, and it is blocked: the program, or the one field named or every field refused.",
      "2:The input or the call is wrong; nothing was printed as a result, nothing written.",
      "3:The program itself failed."
    },
    versionProvider = Swathbook.Version.class,
    subcommands = {
      InitCommand.class,
      PlanCommand.class,
      SeasonCommand.class,
      CheckCommand.class,
      CatalogCommand.class,
      RulesCommand.class
    })
final class Swathbook implements Runnable {
  @Spec CommandSpec spec;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      scope = ScopeType.INHERIT,
      description = "Show this help and stop.")
  boolean help;

  @Option(
      names = {"-V", "--version"},
      versionHelp = true,
      description = "Print the version and stop.")
  boolean version;

  @Option(
      names = "--debug",
      scope = ScopeType.INHERIT,
      description = "Show the stack trace of an internal error.")
  boolean debug;

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "a command is missing");
  }

  /** The version written into the jar when it was built. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = Swathbook.class.getPackage().getImplementationVersion();
      return new String[] {
        version == null
            ? "swathbook, version unknown (not run from its jar)"
            : "swathbook " + version
      };
    }
  }
}
