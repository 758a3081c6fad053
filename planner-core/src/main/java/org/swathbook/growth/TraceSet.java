package org.swathbook.growth;

import java.util.List;
import org.swathbook.book.Field;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Crop;

/**
 * One field through all weather years; every year counts the same. Weeds are in the order of the
 * field's list.
 */
public record TraceSet(Field field, Crop crop, List<WeedPressure> weeds, List<SeasonTrace> years) {

  public TraceSet {
    weeds = List.copyOf(weeds);
    years = List.copyOf(years);
    if (years.isEmpty()) {
      throw new IllegalArgumentException("a field needs at least one weather year");
    }
  }
}
