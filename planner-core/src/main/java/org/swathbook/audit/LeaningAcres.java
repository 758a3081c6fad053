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

  /** By field and weed its seasons in order. */
  static LeaningAcres of(List<List<SeasonSites>> byWeed) {
    Map<FieldId, SeasonSites> fewest = new LinkedHashMap<>();
    for (List<SeasonSites> seasons : byWeed) {
      SeasonSites last = seasons.get(seasons.size() - 1);
      fewest.merge(last.field().id(), last, LeaningAcres::fewer);
    }
    double all = 0;
    double none = 0;
    double one = 0;
    for (SeasonSites s : fewest.values()) {
      all += s.field().acres();
      none += s.effective().isEmpty() ? s.field().acres() : 0;
      one += s.effective().size() == 1 ? s.field().acres() : 0;
    }
    return new LeaningAcres(all, none, one);
  }

  private static SeasonSites fewer(SeasonSites a, SeasonSites b) {
    if (a.season() != b.season()) {
      return a.season() > b.season() ? a : b;
    }
    return b.effective().size() < a.effective().size() ? b : a;
  }

  public double onOnePct() {
    return acres > 0 ? 100 * onOne / acres : 0;
  }

  public double onNonePct() {
    return acres > 0 ? 100 * onNone / acres : 0;
  }
}
