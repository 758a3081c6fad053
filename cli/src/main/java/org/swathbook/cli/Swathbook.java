package org.swathbook.cli;

import java.io.Reader;
import java.util.List;
import org.swathbook.catalog.file.CatalogLoader;
import org.swathbook.cli.terminal.Answers;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The program's own options; the work is done by the commands below it. */
@Command(
    addMethodSubcommands = false,
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
    versionProvider = Swathbook.Version.class)
final class Swathbook implements Runnable {
  private final Reader answers;
  private final CatalogLoader catalogs;

  Swathbook(Reader answers, CatalogLoader catalogs) {
    this.answers = answers;
    this.catalogs = catalogs;
  }

  /** The program that a command belongs to. */
  static Swathbook of(CommandSpec command) {
    return (Swathbook) command.root().userObject();
  }

  /** Reads catalogs, each once. */
  CatalogLoader catalogs() {
    return catalogs;
  }

  /** Asks whoever called. */
  Answers answers() {
    return new Answers(answers, spec.commandLine().getErr());
  }

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

  /**
   * The commands that a call needs to know. Making one from its notes takes long beside a short
   * command, so a call that starts with the name of one gets it alone; any other may ask for the
   * help of them all, or for what comes nearest to a word.
   */
  static List<Class<?>> commandsFor(String... args) {
    return switch (args.length == 0 ? "" : args[0]) {
      case "init" -> List.of(InitCommand.class);
      case "plan" -> List.of(PlanCommand.class);
      case "season" -> List.of(SeasonCommand.class);
      case "check" -> List.of(CheckCommand.class);
      case "load" -> List.of(LoadCommand.class);
      case "calibrate" -> List.of(CalibrateCommand.class);
      case "order" -> List.of(OrderCommand.class);
      case "record" -> List.of(RecordCommand.class);
      case "escapes" -> List.of(EscapesCommand.class);
      case "audit" -> List.of(AuditCommand.class);
      case "catalog" -> List.of(CatalogCommand.class);
      case "rules" -> List.of(RulesCommand.class);
      default ->
          List.of(
              InitCommand.class,
              PlanCommand.class,
              SeasonCommand.class,
              CheckCommand.class,
              LoadCommand.class,
              CalibrateCommand.class,
              OrderCommand.class,
              RecordCommand.class,
              EscapesCommand.class,
              AuditCommand.class,
              CatalogCommand.class,
              RulesCommand.class,
              CompletionCommand.class);
    };
  }

  /** Whether a call reads a book, of which its catalog takes longest. */
  static boolean readsBook(String... args) {
    return switch (args.length == 0 ? "" : args[0]) {
      case "plan", "season", "check", "load", "order", "record", "escapes", "audit" -> true;
      default -> false;
    };
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
