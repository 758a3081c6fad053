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
 * @param others whether columns that nobody knows are passed over instead of refused; for files as
 *     downloaded, which nobody wrote by hand
 */
public record CsvColumns(List<String> required, List<String> optional, boolean others) {

  public CsvColumns {
    required = List.copyOf(required);
    optional = List.copyOf(optional);
  }

  public static CsvColumns required(String... names) {
    return new CsvColumns(List.of(names), List.of(), false);
  }

  public CsvColumns andOptional(String... names) {
    return new CsvColumns(required, List.of(names), others);
  }

  /** The same, with any further column passed over. */
  public CsvColumns andOthers() {
    return new CsvColumns(required, optional, true);
  }

  boolean allows(String name) {
    return others || required.contains(name) || optional.contains(name);
  }

  /** Those that must be there first. */
  public List<String> all() {
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
