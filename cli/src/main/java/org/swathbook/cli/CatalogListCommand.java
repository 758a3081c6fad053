package org.swathbook.cli;

import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.WrittenCatalog;
import org.swathbook.catalog.review.Provenance;
import org.swathbook.cli.json.CatalogListJson;
import org.swathbook.cli.terminal.ExitCode;
import org.swathbook.cli.text.CatalogListText;
import org.swathbook.cli.text.ProvenanceText;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** Names what is in the catalog. */
@Command(
    addMethodSubcommands = false,
    name = "list",
    description = {"Lists what the catalog holds.", "For example: catalog list product"})
final class CatalogListCommand implements Callable<Integer> {
  @Parameters(
      arity = "0..1",
      paramLabel = "KIND",
      converter = Kind.class,
      description = "ingredient, product, weed or crop; all of them when left out.")
  @Nullable EntryKind kind;

  @Option(
      names = "--sources",
      description = "Count instead on what the values rest: published, memory, our defaults.")
  boolean sources;

  @Mixin CatalogOption catalog = new CatalogOption();
  @Mixin OutputOption output = new OutputOption();

  @Override
  public Integer call() {
    WrittenCatalog read = catalog.load();
    if (sources) {
      output.print(
          output.json
              ? CatalogListJson.sources(Provenance.of(read))
              : ProvenanceText.of(Provenance.of(read)));
      return ExitCode.DONE;
    }
    output.print(output.json ? CatalogListJson.of(read, kind) : CatalogListText.of(read, kind));
    return ExitCode.DONE;
  }

  /** A kind by its word, one or many. */
  static final class Kind implements ITypeConverter<EntryKind> {
    @Override
    public EntryKind convert(String text) {
      String typed = text.strip().toLowerCase(Locale.ROOT);
      for (EntryKind kind : EntryKind.values()) {
        if (typed.equals(kind.word()) || typed.equals(kind.plural())) {
          return kind;
        }
      }
      throw new TypeConversionException(
          "'" + text + "' is no kind; write ingredient, product, weed or crop");
    }
  }
}
