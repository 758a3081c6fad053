package org.swathbook.cli;

import java.io.Reader;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.swathbook.catalog.file.CatalogLoader;
import org.swathbook.cli.terminal.Answers;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;

/** The program's own options; the work is done by the commands below it. */
final class Swathbook implements Runnable {
  final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
  private final Flag debug;
  private final Reader answers;
  private final CatalogLoader catalogs;

  Swathbook(Reader answers, CatalogLoader catalogs) {
    this.answers = answers;
    this.catalogs = catalogs;
    spec.name("swathbook")
        .versionProvider(new Version())
        .usageMessage()
        .description("Plans herbicide programs and checks tank mixes. The label is the law.")
        .synopsisSubcommandLabel("COMMAND")
        .exitCodeListHeading("Exit codes:%n")
        .exitCodeList(exitCodes());
    Flag.option(
        spec,
        OptionSpec.builder("-h", "--help")
            .usageHelp(true)
            .scopeType(ScopeType.INHERIT)
            .description("Show this help and stop."));
    Flag.option(
        spec,
        OptionSpec.builder("-V", "--version")
            .versionHelp(true)
            .description("Print the version and stop."));
    debug =
        Flag.option(
            spec,
            OptionSpec.builder("--debug")
                .scopeType(ScopeType.INHERIT)
                .description("Show the stack trace of an internal error."));
  }

  private static Map<String, String> exitCodes() {
    Map<String, String> out = new LinkedHashMap<>();
    out.put(
        "0",
        "Done, and nothing that was asked about is blocked. What lists many things tells of each whether"
            + " it is blocked, and ends so too: plan of several fields, plan --queue, order, audit.");
    out.put(
        "1",
        "Done, and it is blocked: the program, or the one field named or every field refused.");
    out.put(
        "2", "The input or the call is wrong; nothing was printed as a result, nothing written.");
    out.put("3", "The program itself failed.");
    return out;
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

  boolean debug() {
    return debug.isGiven();
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "a command is missing");
  }

  /**
   * The commands that a call needs to know. Making one takes long beside a short command, so a call
   * that starts with the name of one gets it alone; any other may ask for the help of them all, or
   * for what comes nearest to a word.
   */
  static List<CommandSpec> commandsFor(String... args) {
    return switch (args.length == 0 ? "" : args[0]) {
      case "init" -> List.of(new InitCommand().spec);
      case "plan" -> List.of(new PlanCommand().spec);
      case "season" -> List.of(new SeasonCommand().spec);
      case "check" -> List.of(new CheckCommand().spec);
      case "load" -> List.of(new LoadCommand().spec);
      case "calibrate" -> List.of(new CalibrateCommand().spec);
      case "order" -> List.of(new OrderCommand().spec);
      case "record" -> List.of(new RecordCommand().spec);
      case "escapes" -> List.of(new EscapesCommand().spec);
      case "audit" -> List.of(new AuditCommand().spec);
      case "catalog" -> List.of(new CatalogCommand().spec);
      case "rules" -> List.of(new RulesCommand().spec);
      default ->
          List.of(
              new InitCommand().spec,
              new PlanCommand().spec,
              new SeasonCommand().spec,
              new CheckCommand().spec,
              new LoadCommand().spec,
              new CalibrateCommand().spec,
              new OrderCommand().spec,
              new RecordCommand().spec,
              new EscapesCommand().spec,
              new AuditCommand().spec,
              new CatalogCommand().spec,
              new RulesCommand().spec,
              new CompletionCommand().spec);
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
