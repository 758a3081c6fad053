package org.swathbook.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.swathbook.book.file.BookSchemas;
import org.swathbook.catalog.file.CatalogSchemas;
import org.swathbook.cli.terminal.ExitCode;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Prints what an editor needs to complete and check the files that people keep. */
final class CatalogSchemaCommand implements Callable<Integer> {
  final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
  private final Value<String> name;

  CatalogSchemaCommand() {
    spec.name("schema")
        .usageMessage()
        .description(
            "Prints the JSON Schema of a YAML file, or the Table Schema of a CSV file, of the"
                + " catalog or of a book.",
            "A new book has them all in its folder schemas.",
            "For example: catalog schema fields");
    name =
        Value.positional(
            spec,
            "NAME",
            String.class,
            "ingredient, fields, book and so on; their names when left out.");
  }

  @Override
  public Integer call() {
    List<String> names = names();
    String typed = name.value();
    if (typed == null) {
      spec.commandLine().getOut().print(String.join("\n", names) + "\n");
      return ExitCode.DONE;
    }
    String text =
        text(typed)
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(),
                        "there is no schema '" + typed + "'" + Complaints.nearest(typed, names)));
    spec.commandLine().getOut().print(text);
    return ExitCode.DONE;
  }

  /** Every name, those of the catalog first. */
  static List<String> names() {
    return Stream.concat(CatalogSchemas.names().stream(), BookSchemas.names().stream()).toList();
  }

  static Optional<String> text(String name) {
    return CatalogSchemas.text(name).or(() -> BookSchemas.text(name));
  }

  static Optional<String> fileName(String name) {
    return CatalogSchemas.fileName(name).or(() -> BookSchemas.fileName(name));
  }
}
