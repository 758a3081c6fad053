package org.swathbook.book;

import java.util.List;
import org.swathbook.catalog.Weed;
import org.swathbook.program.FieldId;

/**
 * A weed of a field.
 *
 * @param perM2 the season's whole emergence per m² without control
 * @param biotypes at least one; shares add up to 1
 * @param listed every resistance that is listed or suspected, at any share: it strikes the site
 *     from the counts
 */
public record WeedPressure(
    FieldId field,
    Weed weed,
    double perM2,
    DriverKind driver,
    List<Biotype> biotypes,
    List<Resistance> listed,
    String note) {

  public WeedPressure {
    biotypes = List.copyOf(biotypes);
    listed = List.copyOf(listed);
  }
}
