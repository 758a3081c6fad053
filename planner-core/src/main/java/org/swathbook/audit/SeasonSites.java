package org.swathbook.audit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.swathbook.book.Field;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Ordered;
import org.swathbook.catalog.Site;
import org.swathbook.season.outcome.SiteControl;

/**
 * Which sites of action a weed met on a field in a season of the journal.
 *
 * @param field as it was in that season
 * @param weed with the resistances that the book lists today
 * @param applied every site that was sprayed, whatever it does to the weed
 * @param met what the season's emergence met; empty when that season is not walked
 * @param dependence on the site that would be missed most; empty likewise, or when no site works
 * @param notes what is to be known of the season, one sentence each
 */
public record SeasonSites(
    Field field,
    WeedPressure weed,
    int season,
    SortedSet<Site> applied,
    List<SprayedPass> passes,
    Optional<Met> met,
    Optional<Dependence> dependence,
    List<String> notes) {

  /** Control above which more is no more selection: what no partner reaches caps it anyhow. */
  private static final double MOST_CONTROL = 0.99;

  /** Shares of the season's emergence, percent, that met none, one, two or more effective sites. */
  public record Met(double nonePct, double onePct, double twoOrMorePct) {}

  /**
   * @param controlPct of the season, as an eye rates it
   * @param withoutPct the same with the site doing nothing
   */
  public record Dependence(Site site, double controlPct, double withoutPct) {}

  public SeasonSites {
    applied = new TreeSet<>(applied);
    passes = List.copyOf(passes);
    notes = List.copyOf(notes);
  }

  @Override
  public SortedSet<Site> applied() {
    return new TreeSet<>(applied);
  }

  /** Sites that were effective in some pass, through leaves or through the soil. */
  public SortedSet<Site> effective() {
    SortedSet<Site> out = new TreeSet<>();
    for (SprayedPass p : passes) {
      SprayedPass.addEffective(p.foliar(), out);
      SprayedPass.addEffective(p.soil(), out);
    }
    return out;
  }

  /**
   * Each site's part in the kill: -Σ ln(1 - control) over its uses, for survival multiplies and its
   * logarithms add (ours; a proposal). A resisted site counts by what it still kills.
   */
  public Map<Site, Double> kill() {
    return Ordered.map(kill(true));
  }

  /**
   * By site, in their order.
   *
   * @param all those that the weed resists too
   */
  private Map<Site, Double> kill(boolean all) {
    Map<Site, Double> out = new TreeMap<>();
    for (SprayedPass p : passes) {
      add(out, p.foliar(), all);
      add(out, p.soil(), all);
    }
    return out;
  }

  private static void add(Map<Site, Double> to, List<SiteControl> sites, boolean all) {
    for (SiteControl s : sites) {
      double share = Math.min(MOST_CONTROL, s.controlPct() / 100);
      if (share > 0 && (all || !s.struck())) {
        to.merge(s.site(), -Math.log(1 - share), Double::sum);
      }
    }
  }

  /** Sites that the weed does not resist, as many as equal parts of the kill would be. */
  public double effectiveNumber() {
    return HillNumber.shannon(kill(false).values());
  }

  /** The same by the inverse of Simpson's index, in which small parts weigh less. */
  public double inverseSimpson() {
    return HillNumber.inverseSimpson(kill(false).values());
  }

  /** The site that did most of the killing, resisted ones among them. */
  public Optional<Site> dominant() {
    return dominant(kill(true));
  }

  /**
   * Of equal ones the first.
   *
   * @param kill by site, in their order
   */
  private static Optional<Site> dominant(Map<Site, Double> kill) {
    Site most = null;
    double kills = 0;
    for (Map.Entry<Site, Double> e : kill.entrySet()) {
      if (e.getValue() > kills) {
        most = e.getKey();
        kills = e.getValue();
      }
    }
    return Optional.ofNullable(most);
  }

  /** Its part in the kill, 0 to 1; 0 when nothing killed. */
  public double dominantShare() {
    Map<Site, Double> kill = kill(true);
    double sum = kill.values().stream().mapToDouble(Double::doubleValue).sum();
    return sum > 0 ? dominant(kill).map(kill::get).orElse(0.0) / sum : 0;
  }

  /**
   * Share of the emergence, percent, that met fewer than two effective sites. Of a season that is
   * not walked all or none of it, by whether two sites were effective.
   */
  public double leaningPct() {
    return met.map(m -> m.nonePct() + m.onePct()).orElse(effective().size() < 2 ? 100.0 : 0.0);
  }
}
