package org.swathbook.cli.work;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.swathbook.book.Field;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ProgramWriter;
import org.swathbook.cli.report.KeptField;
import org.swathbook.cli.report.PlannedField;
import org.swathbook.plan.PlannedProgram;
import org.swathbook.plan.keep.KeptProgram;
import org.swathbook.program.Program;
import org.swathbook.source.Mark;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;

/** Keeps planned programs in the book. */
public final class SavedPrograms {
  private final BookPaths paths;
  private final boolean force;

  public SavedPrograms(BookPaths paths, boolean force) {
    this.paths = paths;
    this.force = force;
  }

  /**
   * Looks before the work whether anything would be written over, so that then nothing is written.
   *
   * @throws ProblemsException with every program that stands in the way
   */
  public void checkFree(List<Field> fields) {
    Problems problems = new Problems();
    for (Field f : fields) {
      Path file = paths.programOf(f.id());
      if (!force && Files.exists(file)) {
        problems.add(
            Mark.startOf(paths.nameOf(file)),
            "there is a program of this name already",
            "write over it with --force, or keep it under another name");
      }
    }
    problems.throwIfAny();
  }

  /** Writes the kept program of a field; one line on what was done. */
  public String write(KeptField kept) {
    Map<Path, Program> programs = new LinkedHashMap<>();
    String line =
        kept.isRefused() ? refused(kept.field()) : take(kept.field(), first(kept), programs);
    ProgramWriter.writeAll(programs, paths, force);
    return line;
  }

  private static Saved first(KeptField kept) {
    KeptProgram first = kept.kept().programs().get(0);
    return new Saved(first.judged().outcome().program(), first.meetsHouseRules());
  }

  /** What is written of a field. */
  private record Saved(Program program, boolean recommended) {}

  private String take(Field field, Saved saved, Map<Path, Program> programs) {
    Path file = paths.programOf(field.id());
    programs.put(file, saved.program());
    return field.id()
        + ": saved as "
        + paths.nameOf(file)
        + (saved.recommended() ? "" : ", though it is not recommended");
  }

  private static String refused(Field field) {
    return field.id() + ": refused, nothing to save";
  }

  /**
   * Writes the first program of each field, all of them or none; one line for each field on what
   * was done.
   */
  public List<String> write(List<PlannedField> plans) {
    Map<Path, Program> programs = new LinkedHashMap<>();
    List<String> lines = new ArrayList<>();
    for (PlannedField p : plans) {
      if (p.isRefused()) {
        lines.add(refused(p.field()));
      } else {
        PlannedProgram first = p.programs().get(0);
        Saved saved = new Saved(first.outcome().program(), first.recommended());
        lines.add(take(p.field(), saved, programs));
      }
    }
    ProgramWriter.writeAll(programs, paths, force);
    return lines;
  }
}
