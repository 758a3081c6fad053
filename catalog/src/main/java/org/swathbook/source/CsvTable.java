package org.swathbook.source;

import java.util.List;

/** A header and its rows in the order of the file. */
public record CsvTable(CsvHeader header, List<CsvRow> rows) {

  public CsvTable {
    rows = List.copyOf(rows);
  }

  public boolean has(String column) {
    return header.has(column);
  }
}
