package org.swathbook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.swathbook.book.file.CatalogPlace;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Slug;
import org.swathbook.catalog.file.CatalogLoader;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.WrittenCatalog;
import org.swathbook.catalog.file.WrittenEntry;
import org.swathbook.cli.json.EntryJson;
import org.swathbook.cli.terminal.ExitCode;
import org.swathbook.cli.text.EntryText;
import org.swathbook.source.Nearest;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Shows one entry with the source of every value. */
final class CatalogShowCommand implements Callable<Integer> {
  final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
  private final Value<String> name;
  private final Flag file;
  private final CatalogOption catalog;
  private final OutputOption output;

  CatalogShowCommand() {
    spec.name("show")
        .usageMessage()
        .description(
            "Shows one entry: every value with its source, what is not stated, where it is used.",
            "With --file, the file itself: put it into the catalog folder of a book and change it"
                + " there; it then takes the place of the starter's.",
            "For example: catalog show AMAPA",
            "For example: catalog show dicamba --file");
    name =
        Value.requiredPositional(
            spec, "NAME", String.class, "An ingredient, product, weed (code or name) or crop.");
    file = Flag.option(spec, "--file", "Print the entry's file as it is written.");
    catalog = new CatalogOption(spec);
    output = new OutputOption(spec);
  }

  @Override
  public Integer call() {
    if (file.isGiven() && output.json()) {
      throw new ParameterException(
          spec.commandLine(), "--file prints the file as it is written; it goes without --json");
    }
    CatalogPlace place = catalog.place();
    WrittenCatalog read = CatalogOption.load(place);
    WrittenEntry entry = find(read, name.required());
    if (file.isGiven()) {
      output.print(new CatalogLoader().text(entry, place.folder()));
    } else {
      output.print(
          output.json()
              ? EntryJson.of(read.catalog(), entry)
              : EntryText.of(read.catalog(), entry));
    }
    return ExitCode.DONE;
  }

  private WrittenEntry find(WrittenCatalog read, String typed) {
    Catalog c = read.catalog();
    Optional<WrittenEntry> found =
        c.findIngredient(typed)
            .flatMap(i -> read.find(EntryKind.INGREDIENT, i.id().value()))
            .or(
                () ->
                    c.findProduct(typed).flatMap(p -> read.find(EntryKind.PRODUCT, p.id().value())))
            .or(
                () ->
                    c.findWeed(typed)
                        .flatMap(w -> read.find(EntryKind.WEED, Slug.of(w.id().value()))))
            .or(() -> c.findCrop(typed).flatMap(x -> read.find(EntryKind.CROP, x.id().value())));
    return found.orElseThrow(
        () -> {
          List<String> known = new ArrayList<>();
          read.entries().forEach(e -> known.add(e.id()));
          c.weeds().forEach(w -> known.add(w.name()));
          // All of them would be a page of names.
          return new ParameterException(
              spec.commandLine(),
              "the catalog holds no '"
                  + typed
                  + "'"
                  + Nearest.of(Slug.of(typed), known)
                      .map(word -> "; the nearest is " + word)
                      .orElse("; 'swathbook catalog list' lists them all"));
        });
  }
}
