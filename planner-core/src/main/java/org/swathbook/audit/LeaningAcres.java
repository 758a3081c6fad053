package org.swathbook.audit;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.swathbook.program.FieldId;

/**
 * Acres by how many effective sites the driver weed that met fewest met in the last season of the
 * journal.
 *
 * @param acres of the fields that were looked at
 */
public record LeaningAcres(double acres, double onNone, double onOne) {

  /** Of every field the weed that met fewest in the last season. */
  static LeaningAcres of(List<LastSites> weeds) {
    // By field, so that the sums are the same in whatever order the weeds stand.
    SortedMap<FieldId, LastSites> fewest = new TreeMap<>();
    weeds.forEach(l -> fewest.merge(l.field(), l, LeaningAcres::fewer));
    double all = 0;
    double none = 0;
    double one = 0;
    for (LastSites l : fewest.values()) {
      all += l.acres();
      none += l.effective() == 0 ? l.acres() : 0;
      one += l.effective() == 1 ? l.acres() : 0;
    }
    return new LeaningAcres(all, none, one);
  }

  private static LastSites fewer(LastSites a, LastSites b) {
    if (a.season() != b.season()) {
      return a.season() > b.season() ? a : b;
    }
    return b.effective() < a.effective() ? b : a;
  }

  public double onOnePct() {
    return acres > 0 ? 100 * onOne / acres : 0;
  }

  public double onNonePct() {
    return acres > 0 ? 100 * onNone / acres : 0;
  }
}
