package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.WrittenEntry;
import org.swathbook.catalog.file.WrittenGroup;
import org.swathbook.catalog.file.WrittenValue;
import org.swathbook.catalog.review.KeyWords;
import org.swathbook.catalog.review.Ratings;
import org.swathbook.catalog.review.Unstated;
import org.swathbook.catalog.review.WhereUsed;
import org.swathbook.measure.Inches;

/** The report of {@code catalog show}: one entry as its keeper wants it. */
public final class EntryText {
  private final Page page = new Page();
  private final List<String> sources = new ArrayList<>();

  private EntryText() {}

  /** Every value with the number of its source, what is not stated, ratings, mentions, sources. */
  public static String of(Catalog catalog, WrittenEntry entry) {
    return new EntryText().write(catalog, entry);
  }

  private String write(Catalog catalog, WrittenEntry entry) {
    String name = entry.text("name");
    String reviewed = entry.text("reviewed");
    page.apart(
        "Swathbook · " + entry.kind().word() + " " + (name.isEmpty() ? entry.id() : name),
        reviewed.isEmpty() ? "" : "reviewed " + reviewed);
    page.line(entry.mark().file());
    for (WrittenGroup g : entry.groups()) {
      page.blank();
      if (g.isUse()) {
        page.line("Use: " + g.name());
      }
      Table table = new Table(2, "lll");
      for (WrittenValue v : g.values()) {
        if (!v.key().equals("name")) {
          table.row(KeyWords.of(v.key()), v.isFact() ? number(v.source()) : "", v.text());
        }
      }
      table.on(page);
    }
    List<Unstated> open = entry.kind() == EntryKind.INGREDIENT ? Unstated.of(entry) : List.of();
    if (!open.isEmpty()) {
      page.blank();
      page.line("Not stated; a question wherever it matters");
      open.forEach(u -> page.wrapped(2, 4, u.text()));
    }
    ratings(catalog, entry);
    List<String> uses = WhereUsed.of(catalog, entry);
    if (!uses.isEmpty()) {
      page.blank();
      page.line("Named by");
      uses.forEach(u -> page.wrapped(2, 4, u));
    }
    page.blank();
    page.line("Sources");
    for (int i = 0; i < sources.size(); i++) {
      page.wrapped(2, 7, String.format(Locale.ROOT, "%-5s%s", "[" + (i + 1) + "]", sources.get(i)));
    }
    page.blank();
    HeadText.foot(page, false);
    return page.toString();
  }

  private void ratings(Catalog catalog, WrittenEntry entry) {
    List<Response> known = Ratings.of(catalog, entry);
    if (known.isEmpty()) {
      return;
    }
    boolean ofWeed = entry.kind() == EntryKind.WEED;
    page.blank();
    page.line("Control of susceptible plants at the full rate, percent (range)");
    Table table = new Table(2, "lllll");
    for (Response r : known) {
      table.row(
          ofWeed ? catalog.ingredient(r.ingredient()).name() : catalog.weed(r.weed()).name(),
          r.timing().name().toLowerCase(Locale.ROOT),
          number(r.source()),
          String.format(Locale.ROOT, "%.0f (%.0f-%.0f)", r.emaxPct(), r.lowPct(), r.highPct()),
          r.controlHeightCm().isPresent()
              ? String.format(
                  Locale.ROOT, "rated at %.0f in", Inches.ofCm(r.controlHeightCm().getAsDouble()))
              : "");
    }
    table.on(page);
  }

  /** {@code [3]}: sources are numbered as they are met. */
  private String number(Source source) {
    int at = sources.indexOf(source.text());
    if (at < 0) {
      sources.add(source.text());
      at = sources.size() - 1;
    }
    return "[" + (at + 1) + "]";
  }
}
