package org.swathbook.cli;

import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The fields that a command is asked about. */
final class AskedFields {
  @Spec(Spec.Target.MIXEE)
  CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "FIELD",
      description = "Ids of fields, ND-1 for example; all fields of the book when left out.")
  List<String> typed = List.of();

  /** The fields typed, each once, in the order of the book; all when none was typed. */
  List<Field> of(Book book) {
    if (book.fields().isEmpty()) {
      throw new ParameterException(
          spec.commandLine(), "the book has no field; write one in its fields.csv");
    }
    List<String> known = book.fields().stream().map(f -> f.id().value()).toList();
    for (String id : typed) {
      if (book.findField(id).isEmpty()) {
        throw new ParameterException(
            spec.commandLine(), "there is no field '" + id + "'" + Complaints.nearest(id, known));
      }
    }
    return book.fields().stream()
        .filter(f -> typed.isEmpty() || typed.stream().anyMatch(f.id()::matches))
        .toList();
  }
}
