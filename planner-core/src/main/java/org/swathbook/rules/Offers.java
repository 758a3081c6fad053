package org.swathbook.rules;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import org.swathbook.book.Field;
import org.swathbook.book.SoilRates;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Method;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.Use;
import org.swathbook.control.FoliarReach;
import org.swathbook.growth.UseFinder;

/** Which sites the catalog has to offer against a weed at a pass: labelled, and not resisted. */
public final class Offers {
  private Offers() {}

  /**
   * Sites with at least one active that takes the house's share of the weed through its leaves, on
   * plants of the height at which it is rated.
   */
  public static SortedSet<Site> foliarSites(PassFacts facts, WeedPressure weed) {
    return sites(
        facts,
        weed,
        i -> Rated.foliarPct(facts, weed, i),
        100 * facts.book().house().effectiveSite());
  }

  /** The same on the smallest plants: these and more. */
  public static SortedSet<Site> foliarSitesOnSmallPlants(PassFacts facts, WeedPressure weed) {
    Catalog catalog = facts.book().catalog();
    Position.Phase phase =
        facts.isInCrop() ? Position.Phase.IN_CROP : Position.Phase.BEFORE_EMERGENCE;
    return sites(
        facts,
        weed,
        i ->
            FoliarReach.onSmallPlants(
                catalog, facts.field(), i, open(facts, i), weed.weed(), phase),
        facts.book().house().effectiveSite());
  }

  /** Sites with at least one active that takes the house's share of the weed through the soil. */
  public static SortedSet<Site> soilSites(PassFacts facts, WeedPressure weed) {
    return sites(
        facts,
        weed,
        i -> Rated.soilPct(facts, weed, i),
        100 * facts.book().house().effectiveSoilSite());
  }

  private static SortedSet<Site> sites(
      PassFacts facts, WeedPressure weed, Function<Ingredient, OptionalDouble> does, double least) {
    SortedSet<Site> sites = new TreeSet<>();
    facts.book().catalog().ingredients().stream()
        .filter(i -> !Rated.isResisted(weed, i))
        .filter(i -> does.apply(i).orElse(0) >= least)
        .filter(i -> isListed(facts, i))
        .forEach(i -> sites.add(i.site()));
    return sites;
  }

  private static boolean isListed(PassFacts facts, Ingredient i) {
    return !open(facts, i).isEmpty();
  }

  private static List<Use> open(PassFacts facts, Ingredient i) {
    return open(i, facts.field(), facts.positions(), facts.method());
  }

  /**
   * Uses of a label that are open to a pass, in the field's state and on its soil as far as that is
   * known. What may only go between the rows, or onto a ripe crop, is no partner for it.
   */
  static List<Use> open(Ingredient i, Field field, Set<Position> positions, Method method) {
    return LabelUses.inCrop(i, field).stream()
        .filter(u -> LabelUses.isIn(u, positions) && u.isBy(method))
        .filter(u -> !u.isHarvestAid() && LabelUses.hasTraits(u, field))
        .filter(u -> UseFinder.mayBeIn(u, field) && takesSoil(u, field))
        .toList();
  }

  private static boolean takesSoil(Use use, Field field) {
    return !(SoilRates.of(use, field) instanceof SoilRates.Refused)
        && use.soilPh().find().stream()
            .allMatch(limit -> field.soilPh().stream().allMatch(limit::allows));
  }
}
