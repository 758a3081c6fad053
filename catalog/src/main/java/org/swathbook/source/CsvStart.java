package org.swathbook.source;

import java.util.Optional;

/**
 * Where a table begins in its file. Lines are counted from the first line of the file all the same.
 *
 * @param linesBefore lines above the header that belong to no table; with a header given, lines of
 *     the file above the first row
 * @param header the header of a file that has none
 */
public record CsvStart(int linesBefore, Optional<String> header) {

  /** The header is the first line. */
  public static final CsvStart FIRST_LINE = new CsvStart(0, Optional.empty());

  /** The header comes after some lines of other text. */
  public static CsvStart after(int lines) {
    return new CsvStart(lines, Optional.empty());
  }

  /** The first line is a row already. */
  public static CsvStart withoutHeader(String header) {
    return new CsvStart(0, Optional.of(header));
  }

  /** Rows that go on below so many lines of a table, told apart from it with its header. */
  public static CsvStart below(int lines, String header) {
    return new CsvStart(lines, Optional.of(header));
  }
}
