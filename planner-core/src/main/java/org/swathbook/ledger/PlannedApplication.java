package org.swathbook.ledger;

import java.time.LocalDate;
import java.util.List;
import org.swathbook.catalog.Position;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;

/**
 * A dose that is still to be sprayed on the whole field in the book's season.
 *
 * @param phase before the crop is up, over it, or after its harvest
 */
public record PlannedApplication(LocalDate date, Dose dose, Position.Phase phase) {

  /** Every dose of a mix on one day. */
  public static List<PlannedApplication> ofMix(LocalDate date, Mix mix, Position.Phase phase) {
    return mix.doses().stream().map(d -> new PlannedApplication(date, d, phase)).toList();
  }
}
