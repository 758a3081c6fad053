package org.swathbook.source;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The columns a table may have.
 *
 * @param required must be there
 * @param optional may be there
 */
public record CsvColumns(List<String> required, List<String> optional) {

  public CsvColumns {
    required = List.copyOf(required);
    optional = List.copyOf(optional);
  }

  public static CsvColumns required(String... names) {
    return new CsvColumns(List.of(names), List.of());
  }

  public CsvColumns andOptional(String... names) {
    return new CsvColumns(required, List.of(names));
  }

  boolean allows(String name) {
    return required.contains(name) || optional.contains(name);
  }

  List<String> all() {
    List<String> all = new ArrayList<>(required);
    all.addAll(optional);
    return all;
  }

  Set<String> missing(List<String> header) {
    Set<String> missing = new TreeSet<>(required);
    header.forEach(missing::remove);
    return missing;
  }
}
