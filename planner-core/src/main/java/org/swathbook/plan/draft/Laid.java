package org.swathbook.plan.draft;

import java.util.List;
import org.swathbook.season.Kernel;
import org.swathbook.season.PassLayers;
import org.swathbook.season.PreparedPass;

/**
 * A pass and what it lays into the soil.
 *
 * @param layers against each driver weed, in their order among the field's weeds
 */
public record Laid(PreparedPass pass, List<PassLayers> layers) {

  public Laid {
    layers = List.copyOf(layers);
  }

  public static Laid of(Kernel kernel, PreparedPass pass, List<Integer> drivers) {
    return new Laid(pass, drivers.stream().map(w -> pass.ownLayers(kernel, w)).toList());
  }
}
