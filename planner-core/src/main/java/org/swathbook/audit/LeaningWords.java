package org.swathbook.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import org.swathbook.catalog.Site;
import org.swathbook.measure.Numbers;
import org.swathbook.rules.Say;

/** Why a field and weed stands where it stands, in words. */
final class LeaningWords {
  private LeaningWords() {}

  static String of(List<SeasonSites> seasons, int streak) {
    List<String> parts = new ArrayList<>();
    for (SeasonSites s : seasons) {
      parts.add(season(s));
    }
    SeasonSites last = seasons.get(seasons.size() - 1);
    if (streak > 1) {
      parts.add(
          "site "
              + last.dominant().orElseThrow()
              + " did most of the killing "
              + streak
              + " seasons running");
    }
    last.dependence()
        .ifPresent(
            d ->
                parts.add(
                    "without site "
                        + d.site()
                        + " control in "
                        + last.season()
                        + " falls from "
                        + Numbers.decimals(d.controlPct(), 0)
                        + " to "
                        + Numbers.decimals(d.withoutPct(), 0)
                        + " %"));
    return String.join("; ", parts) + ".";
  }

  private static String season(SeasonSites s) {
    SortedSet<Site> sites = s.effective();
    String effective =
        switch (sites.size()) {
          case 0 -> "no effective site";
          case 1 -> "site " + sites.first() + " alone";
          default -> "sites " + Say.list(sites.stream().map(Site::toString).toList());
        };
    return s.season()
        + ": "
        + effective
        + s.met()
            .map(
                m ->
                    ", "
                        + Numbers.decimals(m.nonePct() + m.onePct(), 0)
                        + " % of the plants met fewer than two")
            .orElse("");
  }
}
