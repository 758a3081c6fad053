package org.swathbook.book;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A part of a weed's plants with all that it resists. The shares of a weed's biotypes add up to 1.
 */
public record Biotype(double share, List<Resistance> resists) {

  public Biotype {
    resists = List.copyOf(resists);
  }

  // Written out, as in every key that is hashed at a start: see RuleId.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Biotype o
        && Double.compare(share, o.share) == 0
        && resists.equals(o.resists);
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(share) + resists.hashCode();
  }
}
