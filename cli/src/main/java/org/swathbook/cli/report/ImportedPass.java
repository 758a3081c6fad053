package org.swathbook.cli.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.FederalRecord;
import org.swathbook.book.Field;
import org.swathbook.book.file.JournalWriter;

/** A pass that an import wrote. */
public record ImportedPass(
    Field field, LocalDate date, List<Application> rows, FederalRecord federal) {

  public ImportedPass {
    rows = List.copyOf(rows);
  }

  public String id() {
    return rows.get(0).pass();
  }

  /** In the order in which they were written. */
  public static List<ImportedPass> of(Book book, JournalWriter.Written written) {
    Map<String, List<Application>> byId = new LinkedHashMap<>();
    written.ids().forEach(id -> byId.put(id, new ArrayList<>()));
    written.rows().forEach(a -> byId.getOrDefault(a.pass(), new ArrayList<>()).add(a));
    return byId.values().stream()
        .filter(rows -> !rows.isEmpty())
        .map(
            rows -> {
              Application first = rows.get(0);
              Field field = book.findField(first.field().value()).orElseThrow();
              return new ImportedPass(
                  field, first.date(), rows, FederalRecord.of(field, first.date(), rows));
            })
        .toList();
  }
}
