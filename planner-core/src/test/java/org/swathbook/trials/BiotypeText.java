package org.swathbook.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.swathbook.book.Resistance;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.Weed;

/** Reads what a trial's weeds resist: "resistant to groups 2,5,9", "glyphosate-resistant". */
final class BiotypeText {
  /**
   * Share of the plants that resist in a population that a trial calls resistant. Populations of
   * trials are mixed: on giant ragweed that was called glyphosate-resistant, glyphosate alone
   * before planting still gave 22 to 68 % (Vink et al. 2012).
   */
  static final double RESISTANT_SHARE = 0.6;

  private static final Pattern GROUPS = Pattern.compile("groups?\\s*((?:\\d+\\s*[,;and ]*)+)");

  private static final Map<String, Integer> WORDS =
      new TreeMap<>(
          Map.of(
              "glyphosate", 9,
              "epsps", 9,
              "als", 2,
              "psii", 5,
              "atrazine", 5,
              "hppd", 27,
              "ppo", 14,
              "acetolactate", 2,
              "dicamba-resistant", 4,
              "2,4-d-resistant", 4));

  private BiotypeText() {}

  static List<Resistance> of(String text, Weed weed) {
    String low = text.toLowerCase(Locale.ROOT);
    TreeSet<Integer> sites = new TreeSet<>();
    Matcher m = GROUPS.matcher(low);
    while (m.find()) {
      Matcher number = Pattern.compile("\\d+").matcher(m.group(1));
      while (number.find()) {
        sites.add(Integer.parseInt(number.group()));
      }
    }
    if (low.contains("resistant")) {
      WORDS.forEach(
          (word, site) -> {
            if (low.contains(word)) {
              sites.add(site);
            }
          });
    }
    List<Resistance> out = new ArrayList<>();
    for (int site : sites) {
      out.add(
          new Resistance(
              Optional.of(Site.of(site)),
              Optional.empty(),
              RESISTANT_SHARE,
              "assumed",
              isMetabolic(site, weed) ? Optional.of(Resistance.Kept.METABOLIC) : Optional.empty()));
    }
    return out;
  }

  /** Pigweeds break actives of sites 5 and 27 down faster, as a rule (from memory). */
  private static boolean isMetabolic(int site, Weed weed) {
    return (site == 5 || site == 27) && weed.genus().equalsIgnoreCase("amaranthus");
  }
}
