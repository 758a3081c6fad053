package org.swathbook.plan;

import java.util.List;

/**
 * How the programs were found.
 *
 * @param options doses that may be chosen on some date, {@code dates} candidate dates, {@code
 *     labels} programs scored
 * @param combined passes of the best programs met, of which all programs were then compared; 0 when
 *     none were
 * @param exact whether it is proved that of all programs made of those passes none that meets the
 *     house rules has a higher net return than the first one shown
 * @param leftOut products that were left out before the search and why, for the reader
 */
public record SearchNote(
    int options, int dates, int labels, int combined, boolean exact, List<String> leftOut) {

  public SearchNote {
    leftOut = List.copyOf(leftOut);
  }
}
