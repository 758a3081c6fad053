package org.swathbook.cli;

import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** The fields that a command is asked about. */
final class AskedFields {
  private final CommandSpec command;
  private final Words typed;

  AskedFields(CommandSpec command) {
    this.command = command;
    typed =
        Words.positional(
            command,
            "FIELD",
            "Ids of fields, ND-1 for example; all fields of the book when left out.");
  }

  /** Ids as typed; none when all fields are meant. */
  List<String> typed() {
    return typed.all();
  }

  /** The fields typed, each once, in the order of the book; all when none was typed. */
  List<Field> of(Book book) {
    if (book.fields().isEmpty()) {
      throw new ParameterException(
          command.commandLine(), "the book has no field; write one in its fields.csv");
    }
    List<String> known = book.fields().stream().map(f -> f.id().value()).toList();
    for (String id : typed.all()) {
      if (book.findField(id).isEmpty()) {
        throw new ParameterException(
            command.commandLine(),
            "there is no field '" + id + "'" + Complaints.nearest(id, known));
      }
    }
    return book.fields().stream()
        .filter(f -> !typed.isGiven() || typed.all().stream().anyMatch(f.id()::matches))
        .toList();
  }
}
