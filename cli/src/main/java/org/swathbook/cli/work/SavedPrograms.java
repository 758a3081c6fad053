package org.swathbook.cli.work;

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
import org.swathbook.source.NewFiles;
import org.swathbook.source.ProblemsException;

/** Keeps planned programs in the book. */
public final class SavedPrograms {
  private final BookPaths paths;
  private final boolean force;

  public SavedPrograms(BookPaths paths, boolean force) {
    this.paths = paths;
    this.force = force;
  }

  /** What is to be written, and one line a field on what is done. */
  public record Written(NewFiles files, List<String> lines) {
    public Written {
      lines = List.copyOf(lines);
    }
  }

  /**
   * Looks before the work whether the programs can be written, beside what else is to be.
   *
   * @param others what else is to be written
   * @throws ProblemsException with every program that stands in the way, or where none can be
   *     written
   */
  public void checkFree(List<Field> fields, List<Path> others) {
    List<Path> files = fields.stream().map(f -> paths.programOf(f.id())).toList();
    ProgramWriter.checkFree(files, paths, force);
    for (Path file : files) {
      if (others.stream().anyMatch(o -> NewFiles.isSame(o, file))) {
        throw ProblemsException.of(
            Mark.startOf(paths.nameOf(file)),
            "a page is to be written there too",
            "give the page another name");
      }
    }
  }

  /** The kept program of a field. */
  public Written of(KeptField kept) {
    Map<Path, Program> programs = new LinkedHashMap<>();
    String line =
        kept.isRefused() ? refused(kept.field()) : take(kept.field(), first(kept), programs);
    return new Written(ProgramWriter.files(programs, paths, force), List.of(line));
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

  /** The first program of each field. */
  public Written of(List<PlannedField> plans) {
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
    return new Written(ProgramWriter.files(programs, paths, force), lines);
  }
}
