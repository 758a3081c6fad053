package org.swathbook.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.swathbook.audit.FieldChange.Outcome;
import org.swathbook.audit.JournalJudge.Made;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.WeedId;
import org.swathbook.rules.Say;
import org.swathbook.season.SitesMet;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;

/** One more product in each post pass in which a driver weed met fewer than two foliar sites. */
final class SecondSiteAdded {
  private final ChangedSeason season;

  SecondSiteAdded(ChangedSeason season) {
    this.season = season;
  }

  FieldChange everywhere() {
    boolean post = false;
    boolean wanting = false;
    for (int p = 0; p < season.passes().size(); p++) {
      Made pass = season.passes().get(p);
      if (!season.season().isWalked(pass.date()) || !season.trial().isPost(pass)) {
        continue;
      }
      post = true;
      Map<WeedId, SitesMet.OfPass> there = season.sites(p);
      List<WeedPressure> needing =
          season.drivers().stream()
              .filter(w -> ChangedSeason.of(there, w).stands())
              .filter(w -> ChangedSeason.of(there, w).effectiveFoliarSites() < 2)
              .toList();
      if (!needing.isEmpty()) {
        wanting = true;
        season.add(
            p,
            season.passes(),
            needing,
            false,
            sites ->
                needing.stream()
                    .mapToInt(w -> Math.min(2, ChangedSeason.of(sites, w).effectiveFoliarSites()))
                    .sum());
      }
    }
    if (!wanting) {
      return post
          ? season.ended(
              Outcome.NOT_NEEDED,
              "every post pass in which a driver weed stood has two effective foliar sites")
          : season.ended(Outcome.NOT_TRIED, "no post pass in the journal");
    }
    return season.finished("no product with a price is one more effective foliar site: " + tall());
  }

  /** How tall the driver weeds stood, which mostly tells why nothing works on them. */
  private String tall() {
    List<String> out = new ArrayList<>();
    for (int p = 0; p < season.passes().size(); p++) {
      Optional<PassOutcome> pass =
          season.season().passOf(season.trial().walked(), season.passes(), p);
      if (pass.isPresent() && season.trial().isPost(season.passes().get(p))) {
        for (WeedPressure w : season.drivers()) {
          PassWeed at = SeasonTrial.weed(pass.get(), w);
          if (at.stands() && at.effectiveFoliarSites() < 2) {
            out.add(
                w.weed().name()
                    + " up to "
                    + Say.inches(at.p90Cm())
                    + " on "
                    + Say.date(season.passes().get(p).date()));
          }
        }
      }
    }
    return Say.list(out);
  }
}
