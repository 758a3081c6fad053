package org.swathbook.audit;

import java.time.LocalDate;
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
import org.swathbook.season.SitesMet;
import org.swathbook.season.outcome.SiteControl;

/** A soil residual in the first post pass, or where there is none in a pass of its own. */
final class ResidualAdded {
  /** A residual of its own where no post pass was made, days after planting: default, ours. */
  private static final int LAYER_AFTER_DAYS = 28;

  private static final String AFTER_PLANTING =
      ", the first day to spray from " + LAYER_AFTER_DAYS + " days after planting on";

  private final ChangedSeason season;

  /** Control of the weed through the soil by the best site of any tank that was tried, percent. */
  private double mostPct;

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
        Made own = new Made("new pass", dateOf(day.get()), Mix.of(List.of()));
        List<Made> more = new ArrayList<>(season.passes());
        more.add(own);
        more.sort(Comparator.comparing(Made::date));
        layer(more.indexOf(own), List.copyOf(more), driver.get());
      }
    }
    return season.finished(nothingWorks(weed, post));
  }

  /** That no product would have done it, and in which passes it was looked for. */
  private String nothingWorks(Weed weed, OptionalInt post) {
    List<String> looked = new ArrayList<>();
    if (post.isPresent()) {
      looked.add("in the post pass of " + Say.date(season.passes().get(post.getAsInt()).date()));
    }
    ownDay()
        .ifPresent(
            day -> looked.add("in a pass of its own on " + Say.date(dateOf(day)) + AFTER_PLANTING));
    return looked.isEmpty()
        ? "there was no post pass, and no day to spray a residual by itself before harvest"
        : "no product with a price would have been an effective residual on "
            + weed.name()
            + " "
            + String.join(" or ", looked)
            + howFar();
  }

  /** How near the best of them came; empty where nothing works in that soil at all. */
  private String howFar() {
    // Rounded down: what falls short shall not look as if it did not.
    long most = (long) Math.floor(mostPct);
    return most < 1
        ? ""
        : ": the best would have controlled "
            + most
            + " % of what comes up in its first weeks, and one is effective from "
            + Numbers.decimals(100 * season.season().past().house().effectiveSoilSite(), 0)
            + " % on";
  }

  private void layer(int at, List<Made> on, WeedPressure weed) {
    season.add(at, on, List.of(weed), true, sites -> effectiveSites(ChangedSeason.of(sites, weed)));
    if (season.isChanged()) {
      season.walk().weed(weed.weed().id()).overlaps().stream()
          // Passes that are not walked lie after harvest, so places agree.
          .filter(o -> o.nextPass() == at)
          .findFirst()
          .ifPresent(o -> season.say(overlap(o.medianDays())));
    }
  }

  /** Whether a tank has an effective residual, 0 or 1; the best of all tanks is kept. */
  private int effectiveSites(SitesMet.OfPass tank) {
    for (SiteControl site : tank.soil()) {
      mostPct = site.struck() ? mostPct : Math.max(mostPct, site.controlPct());
    }
    return Math.min(1, tank.effectiveSoilSites());
  }

  private static String overlap(double days) {
    String n = Numbers.decimals(Math.abs(days), 0);
    return days >= 0
        ? "it overlaps the layer before by " + n + " days"
        : "the layer before ended " + n + " days earlier: no overlap";
  }

  private LocalDate dateOf(int day) {
    return season.season().traces().years().get(0).bookDateOf(day);
  }

  private Optional<Integer> ownDay() {
    SeasonTrace trace = season.season().traces().years().get(0);
    int day = trace.firstSprayDay(trace.plantingDay() + LAYER_AFTER_DAYS);
    return day <= trace.harvestDay() && day < trace.days() ? Optional.of(day) : Optional.empty();
  }
}
