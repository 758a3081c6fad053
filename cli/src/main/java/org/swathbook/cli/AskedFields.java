package org.swathbook.cli;

import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** The fields that a command is asked about. */
final class AskedFields {
  private AskedFields() {}

  /** The fields typed, each once, in the order of the book; all when none was typed. */
  static List<Field> of(Book book, List<String> typed, CommandLine command) {
    if (book.fields().isEmpty()) {
      throw new ParameterException(command, "the book has no field; write one in its fields.csv");
    }
    List<String> known = book.fields().stream().map(f -> f.id().value()).toList();
    for (String id : typed) {
      if (book.findField(id).isEmpty()) {
        throw new ParameterException(
            command, "there is no field '" + id + "'" + Complaints.nearest(id, known));
      }
    }
    return book.fields().stream()
        .filter(f -> typed.isEmpty() || typed.stream().anyMatch(f.id()::matches))
        .toList();
  }
}
