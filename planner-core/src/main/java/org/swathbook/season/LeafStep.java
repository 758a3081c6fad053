package org.swathbook.season;

import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.Site;
import org.swathbook.control.FoliarTable;
import org.swathbook.growth.SeasonTrace;

/**
 * What a pass does through the leaves of one weed in every year: equal for passes after which the
 * same plants stand, whatever else is in their tanks.
 */
final class LeafStep {
  private static final int NOT_SEEN = -1;

  private final int weed;

  /** By year: the day on which it may change anything. */
  private final int[] day;

  /** By year; null where no plant is killed. */
  private final @Nullable FoliarTable[] table;

  private final int hash;

  private LeafStep(int weed, int[] day, @Nullable FoliarTable[] table) {
    this.weed = weed;
    this.day = day;
    this.table = table;
    int h = 31 * weed + Arrays.hashCode(day);
    for (FoliarTable t : table) {
      h = 31 * h + (t == null ? 0 : t.outcomeHash());
    }
    this.hash = h;
  }

  /** Null when it changes nothing in any year. */
  static @Nullable LeafStep of(Kernel kernel, PreparedPass pass, int weed, Optional<Site> without) {
    int years = kernel.traces().years().size();
    int[] day = new int[years];
    @Nullable FoliarTable[] table = new FoliarTable[years];
    boolean any = false;
    for (int y = 0; y < years; y++) {
      SeasonTrace trace = kernel.traces().years().get(y);
      YearWeed cell = kernel.cell(y, weed);
      DayView view = pass.view(y);
      boolean comes = view != null && pass.day(y) >= 0 && pass.day(y) <= trace.harvestDay();
      if (comes && view.from[weed] < view.up[weed]) {
        FoliarTable t = pass.foliar(y, weed, without);
        table[y] = t.isIdle() ? null : t;
      }
      // A count forgets what set plants back; and passes may come on days in another order.
      boolean counted = view != null && cell.set.scoutingsBy(trace.days() - 1) > 0;
      boolean late = comes && pass.day(y) > cell.ratedOn;
      boolean seen = table[y] != null || counted || late;
      // A missed pass kills nothing, but the count before its date is seen on it.
      int on = comes ? pass.day(y) : -2 - pass.timing().years().get(y).day();
      day[y] = seen ? on : NOT_SEEN;
      any |= seen;
    }
    return any ? new LeafStep(weed, day, table) : null;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    if (!(other instanceof LeafStep o)
        || hash != o.hash
        || weed != o.weed
        || !Arrays.equals(day, o.day)) {
      return false;
    }
    for (int y = 0; y < table.length; y++) {
      FoliarTable a = table[y];
      FoliarTable b = o.table[y];
      if (a != b && (a == null || b == null || !a.doesAsMuchAs(b))) {
        return false;
      }
    }
    return true;
  }

  @Override
  public int hashCode() {
    return hash;
  }
}
