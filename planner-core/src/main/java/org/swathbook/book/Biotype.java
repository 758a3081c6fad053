package org.swathbook.book;

import java.util.List;

/**
 * A part of a weed's plants with all that it resists. The shares of a weed's biotypes add up to 1.
 */
public record Biotype(double share, List<Resistance> resists) {

  public Biotype {
    resists = List.copyOf(resists);
  }
}
