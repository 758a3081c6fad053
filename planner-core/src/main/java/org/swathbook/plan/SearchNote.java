package org.swathbook.plan;

import java.util.List;

/**
 * How the programs were found.
 *
 * @param options doses that may be chosen on some date, {@code dates} candidate dates, {@code
 *     labels} programs scored
 * @param exact optimality is proved over the candidates
 * @param leftOut products that were left out before the search and why, for the reader
 */
public record SearchNote(int options, int dates, int labels, boolean exact, List<String> leftOut) {

  public SearchNote {
    leftOut = List.copyOf(leftOut);
  }
}
