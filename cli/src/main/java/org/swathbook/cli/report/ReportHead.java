package org.swathbook.cli.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.swathbook.book.Book;
import org.swathbook.book.Field;

/**
 * What stands at the head of a report.
 *
 * @param stations weather behind the fields of the report, in their order
 * @param notes what the reader should know of the book and of what was scouted in the fields
 */
public record ReportHead(
    String book, int season, LocalDate today, List<Station> stations, List<String> notes) {

  /** A weather station with the years that programs are walked through. */
  public record Station(String id, List<Integer> years) {

    public Station {
      years = List.copyOf(years);
    }
  }

  public ReportHead {
    stations = List.copyOf(stations);
    notes = List.copyOf(notes);
  }

  /** With what was asked of the result, first among the notes. */
  public ReportHead asked(List<String> wishes) {
    if (wishes.isEmpty()) {
      return this;
    }
    List<String> all = new ArrayList<>();
    all.add("Asked: " + String.join("; ", wishes) + ".");
    all.addAll(notes);
    return new ReportHead(book, season, today, stations, all);
  }

  /** With more notes at the end. */
  public ReportHead noted(List<String> more) {
    List<String> all = new ArrayList<>(notes);
    all.addAll(more);
    return new ReportHead(book, season, today, stations, all);
  }

  public static ReportHead of(Book book, List<Field> fields, LocalDate today) {
    Map<String, Station> stations = new LinkedHashMap<>();
    for (Field f : fields) {
      stations.computeIfAbsent(f.station(), id -> new Station(id, book.station(f).scenarioYears()));
    }
    List<String> notes = new ArrayList<>(book.notes());
    fields.forEach(f -> notes.addAll(WatchNotes.of(book, f)));
    fields.forEach(f -> notes.addAll(ScoutingNotes.of(book, f, today)));
    return new ReportHead(
        book.name(), book.season(), today, new ArrayList<>(stations.values()), notes);
  }
}
