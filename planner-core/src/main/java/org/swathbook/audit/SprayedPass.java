package org.swathbook.audit;

import java.time.LocalDate;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.swathbook.catalog.Site;
import org.swathbook.season.outcome.SiteControl;

/**
 * What a pass of the journal did to one weed, site by site.
 *
 * @param id of the pass in the journal
 * @param weedStood plants were up, so that leaves counted
 * @param foliar each site by itself through leaves; empty when none stood
 * @param soil each site by itself through the soil
 * @param byTable by what the response table rates, since that day is not walked: size, rate and
 *     antagonism do not count
 */
public record SprayedPass(
    LocalDate date,
    String id,
    boolean weedStood,
    List<SiteControl> foliar,
    List<SiteControl> soil,
    boolean byTable) {

  public SprayedPass {
    foliar = List.copyOf(foliar);
    soil = List.copyOf(soil);
  }

  public SortedSet<Site> effectiveFoliar() {
    return effective(foliar);
  }

  public SortedSet<Site> effectiveSoil() {
    return effective(soil);
  }

  private static SortedSet<Site> effective(List<SiteControl> sites) {
    SortedSet<Site> out = new TreeSet<>();
    addEffective(sites, out);
    return out;
  }

  static void addEffective(List<SiteControl> sites, SortedSet<Site> to) {
    for (SiteControl s : sites) {
      if (s.effective()) {
        to.add(s.site());
      }
    }
  }
}
