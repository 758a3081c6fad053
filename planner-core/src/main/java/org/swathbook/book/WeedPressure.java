package org.swathbook.book;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.catalog.Ingredient;
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

  /** Whether no resistance to an active is listed and one is suspected, by the watch list alone. */
  public boolean isOnlyWatched(Ingredient active) {
    boolean watched = false;
    for (Resistance r : listed) {
      if (r.concerns(active)) {
        if (!r.isWatched()) {
          return false;
        }
        watched = true;
      }
    }
    return watched;
  }

  /** The same weed with a site that is watched; the plants stay as they are. */
  public WeedPressure watching(Resistance suspicion) {
    List<Resistance> all = new ArrayList<>(listed);
    all.add(suspicion);
    return new WeedPressure(field, weed, perM2, driver, biotypes, all, note);
  }

  /**
   * The same weed with one more resistance, independent of those it has: each biotype is split, and
   * that share of it resists this too.
   */
  public WeedPressure resisting(Resistance more) {
    List<Biotype> split = new ArrayList<>();
    for (Biotype b : biotypes) {
      List<Resistance> both = new ArrayList<>(b.resists());
      both.add(more);
      split.add(new Biotype(b.share() * more.share(), both));
      split.add(new Biotype(b.share() * (1 - more.share()), b.resists()));
    }
    split.removeIf(b -> !(b.share() > 0));
    List<Resistance> all = new ArrayList<>(listed);
    all.add(more);
    return new WeedPressure(field, weed, perM2, driver, split, all, note);
  }
}
