package org.swathbook.cli.work;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.book.file.WrittenProgram;
import org.swathbook.program.FieldId;
import org.swathbook.source.Mark;
import org.swathbook.source.Problems;

/**
 * Which of the book's programs is the plan of a field: the one named by the user, else the one
 * saved under the field's id, else the only one that there is for it.
 *
 * @param of the plans, by field
 * @param several fields with several programs, none of them under the field's id; with their names
 */
public record FieldPrograms(Map<FieldId, Kept> of, Map<FieldId, List<String>> several) {

  /**
   * A program and where it is kept.
   *
   * @param name of the file, as people know it
   */
  public record Kept(String name, WrittenProgram written) {}

  public FieldPrograms {
    of = Map.copyOf(of);
    several = Map.copyOf(several);
  }

  /** Whether the book has one for the field, or several. */
  public boolean knows(FieldId field) {
    return of.containsKey(field) || several.containsKey(field);
  }

  /**
   * @param named files or names of programs that are to be taken
   */
  public static FieldPrograms read(
      Book book, BookPaths paths, List<Field> fields, List<String> named) {
    Map<FieldId, Kept> chosen = named(book, paths, fields, named);
    Map<FieldId, List<Kept>> kept = new LinkedHashMap<>();
    for (Path file : paths.programs()) {
      WrittenProgram w = ProgramReader.readWritten(file, paths, book);
      kept.computeIfAbsent(w.program().field(), f -> new ArrayList<>())
          .add(new Kept(paths.nameOf(file), w));
    }
    Map<FieldId, List<String>> several = new LinkedHashMap<>();
    for (Field f : fields) {
      List<Kept> all = kept.getOrDefault(f.id(), List.of());
      String own = paths.nameOf(paths.programOf(f.id()));
      all.stream()
          .filter(k -> k.name().equals(own))
          .findFirst()
          .ifPresent(k -> chosen.putIfAbsent(f.id(), k));
      if (all.size() == 1) {
        chosen.putIfAbsent(f.id(), all.get(0));
      } else if (!all.isEmpty() && !chosen.containsKey(f.id())) {
        several.put(f.id(), all.stream().map(Kept::name).toList());
      }
    }
    return new FieldPrograms(chosen, several);
  }

  private static Map<FieldId, Kept> named(
      Book book, BookPaths paths, List<Field> fields, List<String> named) {
    Problems problems = new Problems();
    Map<FieldId, Kept> out = new LinkedHashMap<>();
    for (String name : named) {
      Path file = paths.find(BookPaths.Kind.PROGRAM, name);
      WrittenProgram w = ProgramReader.readWritten(file, paths, book);
      FieldId field = w.program().field();
      if (fields.stream().noneMatch(f -> f.id().equals(field))) {
        problems.add(
            Mark.startOf(paths.nameOf(file)),
            "it is for " + field + ", which was not asked for",
            "name that field too, or leave the program out");
      } else if (out.putIfAbsent(field, new Kept(paths.nameOf(file), w)) != null) {
        problems.add(
            Mark.startOf(paths.nameOf(file)),
            "it is the second program named for " + field,
            "name one for each field");
      }
    }
    problems.throwIfAny();
    return out;
  }
}
