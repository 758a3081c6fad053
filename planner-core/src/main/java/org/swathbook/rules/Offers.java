package org.swathbook.rules;

import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.Use;

/** Which sites the catalog has to offer against a weed at a pass: labelled, and not resisted. */
public final class Offers {
  private Offers() {}

  /** Sites with at least one active that takes the house's share of the weed through its leaves. */
  public static SortedSet<Site> foliarSites(PassFacts facts, WeedPressure weed) {
    return sites(
        facts,
        weed,
        facts.foliarTiming(),
        100 * facts.book().house().effectiveSite(),
        facts.book().catalog().ingredients().stream().filter(Ingredient::hasFoliarActivity));
  }

  /** The same in the soil. */
  public static SortedSet<Site> soilSites(PassFacts facts, WeedPressure weed) {
    return sites(
        facts,
        weed,
        Response.Timing.PRE,
        100 * facts.book().house().effectiveSoilSite(),
        facts.book().catalog().ingredients().stream().filter(Ingredient::hasSoilActivity));
  }

  private static SortedSet<Site> sites(
      PassFacts facts,
      WeedPressure weed,
      Response.Timing timing,
      double leastPct,
      Stream<Ingredient> actives) {
    SortedSet<Site> sites = new TreeSet<>();
    actives
        .filter(i -> weed.listed().stream().noneMatch(r -> r.concerns(i)))
        .filter(i -> isListed(facts, i))
        .filter(
            i ->
                facts
                    .book()
                    .catalog()
                    .response(weed.weed().id(), i.id(), timing)
                    .find()
                    .filter(r -> r.emaxPct() >= leastPct)
                    .isPresent())
        .forEach(i -> sites.add(i.site()));
    return sites;
  }

  private static boolean isListed(PassFacts facts, Ingredient i) {
    return LabelUses.inCrop(i, facts.field()).stream()
        .anyMatch(u -> LabelUses.isIn(u, facts.positions()) && isOpen(u, facts));
  }

  private static boolean isOpen(Use use, PassFacts facts) {
    return LabelUses.hasTraits(use, facts.field());
  }
}
