package org.swathbook.check;

import java.time.LocalDate;
import java.util.Set;
import org.swathbook.catalog.Ordered;
import org.swathbook.catalog.Position;
import org.swathbook.program.Mix;

/**
 * A mix on a day.
 *
 * @param pass place in the program, from 0
 * @param date in the book's season
 * @param positions where in the season the day belongs
 */
public record DatedMix(int pass, LocalDate date, Set<Position> positions, Mix mix) {

  public DatedMix {
    positions = Ordered.set(positions);
  }
}
