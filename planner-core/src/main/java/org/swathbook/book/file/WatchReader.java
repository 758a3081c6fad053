package org.swathbook.book.file;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Resistance;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.Weed;
import org.swathbook.measure.MeasureException;
import org.swathbook.program.FieldId;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvRow;
import org.swathbook.source.Problems;
import org.swathbook.source.Texts;

/**
 * Reads {@code watch.csv}: sites that a weed of a field may resist, seen and not tested. Such a
 * site does not count as effective on that weed there; what weeds.csv lists as resisted stays as it
 * is.
 */
final class WatchReader {
  static final Table TABLE =
      new Table(
          "watch.csv", CsvColumns.required("field", "weed").andOptional("site", "since", "reason"));

  private final Names names;
  private final FieldList fields;
  private final Problems problems;
  private final List<String> notes;
  private final List<WeedPressure> weeds;

  private WatchReader(
      Names names,
      FieldList fields,
      List<WeedPressure> weeds,
      Problems problems,
      List<String> notes) {
    this.names = names;
    this.fields = fields;
    this.problems = problems;
    this.notes = notes;
    this.weeds = new ArrayList<>(weeds);
  }

  /**
   * The weeds with what is watched of them.
   *
   * @param notes takes a line for each row from which nothing follows
   */
  static List<WeedPressure> read(
      Path book,
      Names names,
      FieldList fields,
      List<WeedPressure> weeds,
      Problems problems,
      List<String> notes) {
    if (!TABLE.isThere(book)) {
      return weeds;
    }
    WatchReader reader = new WatchReader(names, fields, weeds, problems, notes);
    TABLE.read(book, problems, reader::row);
    return List.copyOf(reader.weeds);
  }

  private void row(CsvRow csv) {
    Row row = new Row(csv, problems);
    Optional<FieldId> field = row.need("field", fields::parse, "ND-1");
    Optional<Weed> weed = row.need("weed", names::weed, "AMAPA");
    Optional<Site> site = row.find("site", WatchReader::site, "14");
    Optional<LocalDate> since = row.find("since", Texts::date, "2027-06-22");
    if (field.isEmpty() || weed.isEmpty() || !row.isSound()) {
      return;
    }
    if (site.isEmpty()) {
      note(row, "it names no site");
      return;
    }
    boolean there = false;
    for (int i = 0; i < weeds.size(); i++) {
      WeedPressure w = weeds.get(i);
      if (w.field().equals(field.get()) && w.weed().id().equals(weed.get().id())) {
        there = true;
        if (w.listed().stream().noneMatch(r -> r.site().equals(site))) {
          weeds.set(i, w.watching(Resistance.watched(site.get(), since)));
        }
      }
    }
    if (!there) {
      note(row, "weeds.csv has no " + weed.get().id() + " on " + field.get());
    }
  }

  private void note(Row row, String why) {
    notes.add(TABLE.file() + ", line " + row.line() + ": nothing follows, since " + why + ".");
  }

  private static Site site(String text) {
    return Site.find(text)
        .orElseThrow(
            () ->
                new MeasureException(
                    "'" + text + "' is no site of action; write its HRAC/WSSA number"));
  }
}
