package org.swathbook.cli.text;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.Weed;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.WrittenCatalog;

/** The report of {@code catalog list}. */
public final class CatalogListText {
  private CatalogListText() {}

  /**
   * One line an entry.
   *
   * @param only the kind to list; null for all
   */
  public static String of(WrittenCatalog written, @Nullable EntryKind only) {
    Page page = new Page();
    page.line("Swathbook · catalog");
    page.wrapped(
        0, "'swathbook catalog show NAME' shows one entry with the source of every value.");
    for (EntryKind kind :
        List.of(EntryKind.INGREDIENT, EntryKind.PRODUCT, EntryKind.WEED, EntryKind.CROP)) {
      if (only == null || only == kind) {
        int n = written.of(kind).size();
        page.blank();
        page.line(Figures.counted(n, kind.word(), kind.plural()));
        page.blank();
        table(written.catalog(), kind).on(page);
      }
    }
    page.blank();
    HeadText.foot(page, false);
    return page.toString();
  }

  private static Table table(Catalog c, EntryKind kind) {
    return switch (kind) {
      case INGREDIENT -> {
        Table t = new Table(2, "lll");
        c.ingredients().forEach(i -> t.row(i.name(), "site " + i.site(), crops(c, i)));
        yield t;
      }
      case PRODUCT -> {
        Table t = new Table(2, "lll");
        c.products().forEach(p -> t.row(p.name(), p.formulation(), contents(c, p)));
        yield t;
      }
      case WEED -> {
        Table t = new Table(2, "lll");
        for (Weed w : c.weeds()) {
          t.row(w.id().value(), w.name(), w.latin());
        }
        yield t;
      }
      case CROP -> {
        Table t = new Table(2, "ll");
        for (Crop crop : c.crops()) {
          t.row(crop.name(), Figures.counted(crop.stages().size(), "stage", "stages"));
        }
        yield t;
      }
    };
  }

  private static String crops(Catalog c, Ingredient i) {
    Stream<String> named =
        i.uses().stream()
            .filter(u -> !u.refused())
            .flatMap(u -> u.crop().stream())
            .distinct()
            .map(id -> c.crop(id).name());
    Stream<String> any =
        i.uses().stream().map(Use::crop).anyMatch(x -> x.isEmpty())
            ? Stream.of("before any crop or on stubble")
            : Stream.empty();
    return Stream.concat(named, any).collect(Collectors.joining(", "));
  }

  private static String contents(Catalog c, Product p) {
    return p.contents().stream()
        .map(x -> c.ingredient(x.ingredient()).name() + " " + x.concentration().written())
        .collect(Collectors.joining(" + "));
  }
}
