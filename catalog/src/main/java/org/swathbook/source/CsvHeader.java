package org.swathbook.source;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The columns of a table in the order of the file. */
public final class CsvHeader {
  private final String file;
  private final Mark mark;
  private final List<String> names;
  private final Map<String, Integer> places = new HashMap<>();

  CsvHeader(Mark mark, List<String> names) {
    this.file = mark.file();
    this.mark = mark;
    this.names = List.copyOf(names);
    for (int i = 0; i < names.size(); i++) {
      places.putIfAbsent(names.get(i), i);
    }
  }

  public String file() {
    return file;
  }

  public Mark mark() {
    return mark;
  }

  public List<String> names() {
    return names;
  }

  public boolean has(String column) {
    return places.containsKey(column);
  }

  /** Its place in the table, from 0; -1 when the table has no such column. */
  public int indexOf(String column) {
    return places.getOrDefault(column, -1);
  }
}
