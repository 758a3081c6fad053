package org.swathbook.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.swathbook.audit.FieldChange.Outcome;
import org.swathbook.audit.JournalJudge.Made;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Weed;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.measure.Numbers;
import org.swathbook.program.Mix;
import org.swathbook.rules.Say;

/** A soil residual in the first post pass, or where there is none in a pass of its own. */
final class ResidualAdded {
  /** A residual of its own where no post pass was made, days after planting: default, ours. */
  private static final int LAYER_AFTER_DAYS = 28;

  private final ChangedSeason season;

  ResidualAdded(ChangedSeason season) {
    this.season = season;
  }

  FieldChange on(Weed weed) {
    Optional<WeedPressure> driver =
        season.drivers().stream().filter(w -> w.weed().id().equals(weed.id())).findFirst();
    if (driver.isEmpty()) {
      return season.ended(Outcome.NOT_TRIED, weed.name() + " is no driver weed of that season");
    }
    OptionalInt post = season.trial().firstPost();
    if (post.isPresent()) {
      int at = post.getAsInt();
      Made pass = season.passes().get(at);
      if (ChangedSeason.of(season.sites(at), driver.get()).effectiveSoilSites() > 0) {
        return season.ended(
            Outcome.NOT_NEEDED,
            "the pass of " + Say.date(pass.date()) + " brings an effective residual");
      }
      layer(at, season.passes(), driver.get());
    }
    if (!season.isChanged()) {
      Optional<Integer> day = ownDay();
      if (day.isPresent()) {
        SeasonTrace trace = season.season().traces().years().get(0);
        Made own = new Made("new pass", trace.bookDateOf(day.get()), Mix.of(List.of()));
        List<Made> more = new ArrayList<>(season.passes());
        more.add(own);
        more.sort(Comparator.comparing(Made::date));
        layer(more.indexOf(own), List.copyOf(more), driver.get());
      }
    }
    return season.finished(
        "no product with a price is an effective residual on it, in the first post pass or in a"
            + " pass of its own "
            + LAYER_AFTER_DAYS
            + " days after planting");
  }

  private void layer(int at, List<Made> on, WeedPressure weed) {
    season.add(
        at,
        on,
        List.of(weed),
        true,
        sites -> Math.min(1, ChangedSeason.of(sites, weed).effectiveSoilSites()));
    if (season.isChanged()) {
      season.walk().weed(weed.weed().id()).overlaps().stream()
          // Passes that are not walked lie after harvest, so places agree.
          .filter(o -> o.nextPass() == at)
          .findFirst()
          .ifPresent(o -> season.say(overlap(o.medianDays())));
    }
  }

  private static String overlap(double days) {
    String n = Numbers.decimals(Math.abs(days), 0);
    return days >= 0
        ? "it overlaps the layer before by " + n + " days"
        : "the layer before ended " + n + " days earlier: no overlap";
  }

  private Optional<Integer> ownDay() {
    SeasonTrace trace = season.season().traces().years().get(0);
    int day = trace.firstSprayDay(trace.plantingDay() + LAYER_AFTER_DAYS);
    return day <= trace.harvestDay() && day < trace.days() ? Optional.of(day) : Optional.empty();
  }
}
