package org.swathbook.cli;

import java.util.Locale;
import java.util.concurrent.Callable;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.WrittenCatalog;
import org.swathbook.catalog.review.Provenance;
import org.swathbook.cli.json.CatalogListJson;
import org.swathbook.cli.terminal.ExitCode;
import org.swathbook.cli.text.CatalogListText;
import org.swathbook.cli.text.ProvenanceText;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.TypeConversionException;

/** Names what is in the catalog. */
final class CatalogListCommand implements Callable<Integer> {
  final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
  private final Value<EntryKind> kind;
  private final Flag sources;
  private final CatalogOption catalog;
  private final OutputOption output;

  CatalogListCommand() {
    spec.name("list")
        .usageMessage()
        .description("Lists what the catalog holds.", "For example: catalog list product");
    kind =
        Value.positional(
            spec,
            "KIND",
            EntryKind.class,
            new Kind(),
            "ingredient, product, weed or crop; all of them when left out.");
    sources =
        Flag.option(
            spec,
            "--sources",
            "Count instead on what the values rest: published, memory, our defaults.");
    catalog = new CatalogOption(spec);
    output = new OutputOption(spec);
  }

  @Override
  public Integer call() {
    WrittenCatalog read = catalog.load();
    if (sources.isGiven()) {
      output.print(
          output.json()
              ? CatalogListJson.sources(Provenance.of(read))
              : ProvenanceText.of(Provenance.of(read)));
      return ExitCode.DONE;
    }
    output.print(
        output.json()
            ? CatalogListJson.of(read, kind.value())
            : CatalogListText.of(read, kind.value()));
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
