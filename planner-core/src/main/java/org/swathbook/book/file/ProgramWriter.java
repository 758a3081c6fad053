package org.swathbook.book.file;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Dose;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.source.Mark;
import org.swathbook.source.NewFiles;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;

/**
 * Writes a program as a file that {@link ProgramReader} reads back to the same program, to the last
 * bit of every rate. A bare ingredient is written with the product that it is to come from, so that
 * a later change of prices does not change the program.
 */
public final class ProgramWriter {
  private static final String CAUTIONS =
      """
      # The label is the law: check every product, rate, stage and interval of this program against the
      # current label of the product in hand, and against state and local rules. Values here may come
      # from memory. Only trained applicators, certified where the label says so, may apply.
      """;

  /** Text that means itself to YAML, also between braces. */
  private static final Pattern PLAIN =
      Pattern.compile("[A-Za-z][A-Za-z0-9.%/_-]*( [A-Za-z0-9.%/_-]+)*");

  private ProgramWriter() {}

  /** The text of the file. */
  public static String text(Program program) {
    StringBuilder out = new StringBuilder(CAUTIONS);
    out.append("format: ").append(ProgramReader.FORMAT).append('\n');
    out.append("name: ").append(quoted(program.name())).append('\n');
    out.append("field: ").append(scalar(program.field().value())).append('\n');
    out.append(program.passes().isEmpty() ? "passes: []\n" : "passes:\n");
    program.passes().forEach(p -> pass(out, p));
    return out.toString();
  }

  private static void pass(StringBuilder out, Pass pass) {
    out.append("  - at: ").append(AnchorParser.text(pass.at())).append('\n');
    out.append("    mix:\n");
    pass.mix().doses().forEach(d -> out.append("      - ").append(dose(d)).append('\n'));
    if (!pass.mix().adjuvants().isEmpty()) {
      out.append("    adjuvants:\n");
      for (Adjuvant a : pass.mix().adjuvants()) {
        out.append("      - {kind: ").append(scalar(a.kind()));
        out.append(", rate: ").append(quoted(a.rate())).append("}\n");
      }
    }
    pass.mix()
        .gallonsPerAcre()
        .ifPresent(
            g ->
                out.append("    carrier: {volume: ")
                    .append(AnchorParser.exact(g))
                    .append(" gal/acre}\n"));
  }

  private static String dose(Dose dose) {
    var rate = dose.named() ? dose.actives().get(0).rate() : dose.rate();
    String what = "product: " + dose.product().id();
    if (dose.named()) {
      what = "ingredient: " + scalar(dose.actives().get(0).ingredient().name()) + ", " + what;
    }
    return "{"
        + what
        + ", rate: "
        + AnchorParser.exact(rate.amount())
        + " "
        + rate.unitText()
        + "}";
  }

  private static String scalar(String text) {
    return PLAIN.matcher(text).matches() ? text : quoted(text);
  }

  /** In double quotes, with everything that is not plain ASCII escaped. */
  private static String quoted(String text) {
    StringBuilder out = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            c -> {
              if (c == '"' || c == '\\') {
                out.append('\\').append((char) c);
              } else if (c >= ' ' && c < 127) {
                out.append((char) c);
              } else if (c <= 0xFFFF) {
                out.append(String.format(Locale.ROOT, "\\u%04X", c));
              } else {
                out.append(String.format(Locale.ROOT, "\\U%08X", c));
              }
            });
    return out.append('"').toString();
  }

  /**
   * Looks before the work whether programs may be written.
   *
   * @throws ProblemsException with every program that is there and not to be lost, or where one
   *     cannot be written
   */
  public static void checkFree(Collection<Path> files, BookPaths paths, boolean force) {
    Problems problems = new Problems();
    for (Path file : files) {
      if (!force && Files.exists(file)) {
        problems.add(
            Mark.startOf(paths.nameOf(file)),
            "there is a program of this name already",
            "write over it with --force, or keep it under another name");
      }
    }
    problems.throwIfAny();
    for (Path file : files) {
      paths.checkInside(file);
      NewFiles.checkWithFolders(file, paths.nameOf(file), problems);
    }
    problems.throwIfAny();
  }

  /** Writes the file whole or not at all; makes its folder when there is none. */
  public static void write(Path file, BookPaths paths, Program program, boolean force) {
    files(Map.of(file, program), paths, force).write();
  }

  /**
   * Several files as they are to be written.
   *
   * @param programs by file, in the order in which they are to be written
   * @throws ProblemsException as {@link #checkFree}
   */
  public static NewFiles files(Map<Path, Program> programs, BookPaths paths, boolean force) {
    checkFree(programs.keySet(), paths, force);
    NewFiles out = new NewFiles();
    programs.forEach((f, p) -> out.put(f, paths.nameOf(f), text(p)));
    return out;
  }
}
