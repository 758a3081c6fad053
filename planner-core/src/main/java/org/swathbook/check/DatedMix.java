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
 * @param date in the book's season, the median over the years
 * @param planned date in the book's season that a plan prints
 * @param positions where in the season the day belongs
 */
public record DatedMix(
    int pass, LocalDate date, LocalDate planned, Set<Position> positions, Mix mix) {

  public DatedMix {
    positions = Ordered.set(positions);
  }

  /** A mix on one certain day. */
  public DatedMix(int pass, LocalDate date, Set<Position> positions, Mix mix) {
    this(pass, date, date, positions, mix);
  }

  /** The same on the date that the plan prints. */
  DatedMix asPlanned() {
    return new DatedMix(pass, planned, positions, mix);
  }
}
