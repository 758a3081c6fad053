package org.swathbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import org.swathbook.cli.terminal.ExitCode;
import org.swathbook.source.NewFolder;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Makes a new book. */
final class InitCommand implements Callable<Integer> {
  final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
  private final Value<Path> dir;
  private final Flag demo;
  private final TodayOption todayOption;

  InitCommand() {
    spec.name("init")
        .usageMessage()
        .description(
            "Makes the folder of a new book, with remarks that say what belongs where.",
            "With --demo, the demo book: invented growers, fields and weather to try things on.",
            "For example: init our-book",
            "For example: init try-out --demo");
    dir =
        Value.requiredPositional(
            spec, "DIR", Path.class, "A folder that does not exist yet, or is empty.");
    demo = Flag.option(spec, "--demo", "Copy the demo book instead.");
    todayOption = new TodayOption(spec);
  }

  @Override
  public Integer call() {
    Path dir = this.dir.required();
    Path target = dir.toAbsolutePath().normalize();
    LocalDate today = todayOption.read();
    try {
      if (!NewFolder.isFree(target)) {
        throw new ParameterException(
            spec.commandLine(), dir + " holds something already; name a new folder");
      }
      new NewBook(target).write(demo.isGiven(), NewBook.seasonAhead(today));
    } catch (IOException e) {
      throw new ParameterException(
          spec.commandLine(), dir + " cannot be written; name a folder that you may write to");
    }
    spec.commandLine()
        .getOut()
        .println(
            demo.isGiven()
                ? "The demo book is in "
                    + dir
                    + "; try: swathbook plan --book "
                    + quoted(dir)
                    + " ND-1"
                : "The new book is in " + dir + "; its README.md says what to fill in");
    return ExitCode.DONE;
  }

  /** As both shells want a name with a space or a bracket in it. */
  private static String quoted(Path path) {
    String name = path.toString();
    return name.matches("[\\p{L}\\p{N}._/\\\\:~-]+") ? name : '"' + name + '"';
  }
}
