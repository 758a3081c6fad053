package org.swathbook.book;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Ordered;
import org.swathbook.catalog.Trait;
import org.swathbook.catalog.WeedId;
import org.swathbook.program.FieldId;

/**
 * What grew on a field in a past season.
 *
 * @param weeds weeds seen that year; a season without a weed breaks none of its streaks
 */
public record PastSeason(
    FieldId field,
    int season,
    CropId crop,
    Optional<Set<Trait>> traits,
    Optional<LocalDate> plantDate,
    Optional<LocalDate> harvestDate,
    Tillage tillage,
    List<WeedId> weeds) {

  public PastSeason {
    traits = traits.map(Ordered::set);
    weeds = List.copyOf(weeds);
  }
}
