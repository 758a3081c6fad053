package org.swathbook.audit;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
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
    passes.forEach(
        p -> {
          out.addAll(p.effectiveFoliar());
          out.addAll(p.effectiveSoil());
        });
    return out;
  }

  /**
   * Each site's part in the kill: -Σ ln(1 - control) over its uses, for survival multiplies and its
   * logarithms add (ours; a proposal). A resisted site counts by what it still kills.
   */
  public Map<Site, Double> kill() {
    return kill(s -> true);
  }

  private Map<Site, Double> kill(Predicate<SiteControl> counted) {
    SortedMap<Site, Double> out = new TreeMap<>();
    for (SprayedPass p : passes) {
      p.foliar().stream().filter(counted).forEach(s -> add(out, s));
      p.soil().stream().filter(counted).forEach(s -> add(out, s));
    }
    return Ordered.map(out);
  }

  private static void add(SortedMap<Site, Double> to, SiteControl s) {
    double share = Math.min(MOST_CONTROL, s.controlPct() / 100);
    if (share > 0) {
      to.merge(s.site(), -Math.log(1 - share), Double::sum);
    }
  }

  /** Sites that the weed does not resist, as many as equal parts of the kill would be. */
  public double effectiveNumber() {
    return HillNumber.shannon(kill(s -> !s.struck()).values());
  }

  /** The same by the inverse of Simpson's index, in which small parts weigh less. */
  public double inverseSimpson() {
    return HillNumber.inverseSimpson(kill(s -> !s.struck()).values());
  }

  /** The site that did most of the killing, resisted ones among them. */
  public Optional<Site> dominant() {
    return kill().entrySet().stream()
        .max(
            Map.Entry.<Site, Double>comparingByValue()
                .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
        .map(Map.Entry::getKey);
  }

  /** Its part in the kill, 0 to 1; 0 when nothing killed. */
  public double dominantShare() {
    Map<Site, Double> kill = kill();
    double sum = kill.values().stream().mapToDouble(Double::doubleValue).sum();
    return sum > 0 ? dominant().map(kill::get).orElse(0.0) / sum : 0;
  }

  /**
   * Share of the emergence, percent, that met fewer than two effective sites. Of a season that is
   * not walked all or none of it, by whether two sites were effective.
   */
  public double leaningPct() {
    return met.map(m -> m.nonePct() + m.onePct()).orElse(effective().size() < 2 ? 100.0 : 0.0);
  }
}
