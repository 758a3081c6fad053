package org.swathbook.audit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.swathbook.program.FieldId;

/**
 * Acres by how many effective sites the driver weed that met fewest met in the last season of the
 * journal.
 *
 * @param acres of the fields that were looked at
 */
public record LeaningAcres(double acres, double onNone, double onOne) {

  /** Of every field the weed that met fewest in the last season. */
  static LeaningAcres of(List<Leaning> weeds) {
    Map<FieldId, Leaning> fewest = new LinkedHashMap<>();
    weeds.forEach(l -> fewest.merge(l.field(), l, LeaningAcres::fewer));
    double all = 0;
    double none = 0;
    double one = 0;
    for (Leaning l : fewest.values()) {
      all += l.acres();
      none += l.lastEffective() == 0 ? l.acres() : 0;
      one += l.lastEffective() == 1 ? l.acres() : 0;
    }
    return new LeaningAcres(all, none, one);
  }

  private static Leaning fewer(Leaning a, Leaning b) {
    if (a.lastSeason() != b.lastSeason()) {
      return a.lastSeason() > b.lastSeason() ? a : b;
    }
    return b.lastEffective() < a.lastEffective() ? b : a;
  }

  public double onOnePct() {
    return acres > 0 ? 100 * onOne / acres : 0;
  }

  public double onNonePct() {
    return acres > 0 ? 100 * onNone / acres : 0;
  }
}
