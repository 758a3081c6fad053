package org.swathbook.ledger;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.swathbook.catalog.Ordered;
import org.swathbook.catalog.Position;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;

/**
 * A dose that is still to be sprayed on the whole field in the book's season.
 *
 * @param positions where in the season it belongs; several when a day fits several
 */
public record PlannedApplication(LocalDate date, Dose dose, Set<Position> positions) {

  public PlannedApplication {
    positions = Ordered.set(positions);
  }

  /** Every dose of a mix on one day. */
  public static List<PlannedApplication> ofMix(LocalDate date, Mix mix, Set<Position> positions) {
    return mix.doses().stream().map(d -> new PlannedApplication(date, d, positions)).toList();
  }
}
