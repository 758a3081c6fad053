package org.swathbook.escapes;

import java.util.List;
import org.swathbook.catalog.Site;

/**
 * What a site of action should have shown by when, days after a pass in warm growing weather; cool
 * weather up to doubles it (from memory), see {@link WarmDays}.
 *
 * @param symptomsFrom first and {@code symptomsTo} last day by which leaves show it
 * @param deadFrom and {@code deadTo}: days by which a plant that dies of it is dead
 * @param judgedFrom no plant is judged before that day
 * @param signs what a plant that is dying of it looks like
 * @param source of the days
 */
public record SiteTimeline(
    Site site,
    boolean contact,
    int symptomsFrom,
    int symptomsTo,
    int deadFrom,
    int deadTo,
    int judgedFrom,
    String signs,
    String source) {

  /** Contact sites are judged from day 7, systemic ones from day 14: common practice, no source. */
  static final int CONTACT_FROM = 7;

  static final int SYSTEMIC_FROM = 14;

  private static final String MEMORY = "from memory";

  private static final List<SiteTimeline> ALL =
      List.of(
          systemic(1, 5, 7, 14, 21, "the whorl leaf pulls out brown at its base", MEMORY),
          systemic(
              2,
              3,
              10,
              10,
              21,
              "no growth, yellow growing points, plants that die slowly",
              "symptoms and death by a seed company's agronomy note of 2014; slow death by University of"
                  + " Florida AG367; the outer days from memory"),
          systemic(4, 0, 1, 7, 21, "twisted, swollen and cracked stems, no upright growth", MEMORY),
          systemic(5, 3, 5, 7, 14, "leaf margins yellow, then brown, the veins last", MEMORY),
          contact(6, 1, 3, 5, 10, "bronzed and dry leaves", MEMORY),
          systemic(
              9,
              5,
              14,
              10,
              21,
              "yellow growing points that turn brown",
              "10 to 14 days to symptoms by University of Illinois Extension; the rest from memory"),
          contact(
              10,
              3,
              5,
              7,
              14,
              "yellow and wilted, then brown; buds brown at every node",
              "a study card, weak; held against Haarmann et al. 2020"),
          contact(14, 0, 2, 3, 7, "brown leaves and brown buds", MEMORY),
          contact(
              22,
              0,
              1,
              1,
              3,
              "leaves wholly brown",
              "hours in full sun and all leaves by day 3: Harre et al. 2020, Weed Technology, citing"
                  + " Shaner 2014"),
          systemic(27, 3, 5, 7, 14, "white new leaves that turn brown", MEMORY));

  private static SiteTimeline systemic(
      int site, int from, int to, int deadFrom, int deadTo, String signs, String source) {
    return new SiteTimeline(
        Site.of(site), false, from, to, deadFrom, deadTo, SYSTEMIC_FROM, signs, source);
  }

  private static SiteTimeline contact(
      int site, int from, int to, int deadFrom, int deadTo, String signs, String source) {
    return new SiteTimeline(
        Site.of(site), true, from, to, deadFrom, deadTo, CONTACT_FROM, signs, source);
  }

  /** A site that no table has is judged as the slowest are: default, ours. */
  static SiteTimeline of(Site site) {
    return ALL.stream()
        .filter(t -> t.site().equals(site))
        .findFirst()
        .orElseGet(
            () ->
                systemic(
                    site.number(),
                    3,
                    14,
                    10,
                    21,
                    "growth has stopped",
                    "no figure known: default"));
  }

  /** Every site that has figures, by number. */
  public static List<SiteTimeline> all() {
    return ALL;
  }
}
