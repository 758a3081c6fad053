package org.swathbook.audit;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Ordered;

/**
 * Until when an active that was sprayed keeps something from a field; what is over already is left
 * out.
 *
 * @param reentry nobody may enter before
 * @param repeat it may not be sprayed again before
 * @param harvest not taken off before, by what is taken
 * @param nextCrop not planted before, by the crops that are to follow; the last day there is for
 *     one that may not follow at all
 */
public record OpenIntervals(
    Optional<LocalDateTime> reentry,
    Optional<LocalDate> repeat,
    Map<Commodity, LocalDate> harvest,
    Map<CropId, LocalDate> nextCrop) {

  public OpenIntervals {
    harvest = Ordered.map(harvest);
    nextCrop = Ordered.map(nextCrop);
  }

  public boolean isEmpty() {
    return reentry.isEmpty() && repeat.isEmpty() && harvest.isEmpty() && nextCrop.isEmpty();
  }
}
