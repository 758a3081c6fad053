package org.swathbook.audit;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.swathbook.audit.FieldChange.Outcome;
import org.swathbook.audit.JournalJudge.Made;
import org.swathbook.catalog.Crop;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.rules.Say;

/** The first post pass by a crop stage; later ones keep their distance to it. */
final class EarlierPosts {
  private final ChangedSeason season;

  EarlierPosts(ChangedSeason season) {
    this.season = season;
  }

  FieldChange by(String stage) {
    OptionalInt post = season.trial().firstPost();
    if (post.isEmpty()) {
      return season.ended(Outcome.NOT_TRIED, "no post pass in the journal");
    }
    SeasonTrace trace = season.season().traces().years().get(0);
    OptionalInt place = stage(trace.crop(), stage);
    if (place.isEmpty()) {
      return season.ended(Outcome.NOT_TRIED, trace.crop().name() + " has no stage " + stage);
    }
    Made first = season.passes().get(post.getAsInt());
    int was = trace.dayOf(first.date());
    if (trace.stageIndex(was) <= place.getAsInt()) {
      return season.ended(
          Outcome.NOT_NEEDED,
          "the first post pass met " + trace.stageName(was) + " on " + Say.date(first.date()));
    }
    int day = trace.dayOfStage(place.getAsInt() + 1) - 1;
    while (day >= trace.emergenceDay() && !trace.sprayable(day)) {
      day--;
    }
    if (day < trace.emergenceDay()) {
      return season.ended(
          Outcome.NOT_TRIED,
          "no day fit for spraying between emergence and the end of "
              + trace.crop().stages().get(place.getAsInt()).name());
    }
    long earlier = ChronoUnit.DAYS.between(trace.bookDateOf(day), first.date());
    List<Made> moved = new ArrayList<>();
    for (int p = 0; p < season.passes().size(); p++) {
      Made m = season.passes().get(p);
      boolean moves =
          p >= post.getAsInt() && season.trial().isPost(m) && season.season().isWalked(m.date());
      moved.add(moves ? new Made(m.id(), m.date().minusDays(earlier), m.mix()) : m);
    }
    moved.sort(Comparator.comparing(Made::date));
    SeasonTrial.Verdict verdict = season.trial().judged(moved, Set.of());
    season.say(
        "the first post pass on "
            + Say.date(trace.bookDateOf(day))
            + " at "
            + trace.stageName(day)
            + ", "
            + Say.days(earlier)
            + " earlier than at "
            + trace.stageName(was));
    if (!verdict.refusals().isEmpty()) {
      return season.ended(Outcome.FORBIDDEN, ChangedSeason.said(verdict.refusals()));
    }
    season.become(moved);
    return season.finished("");
  }

  /** Leaf stages count collars in both ways of writing them: V3 of corn is 3-leaf of sorghum. */
  static OptionalInt stage(Crop crop, String typed) {
    OptionalInt own = crop.findStage(typed);
    return own.isEmpty() && typed.matches("[Vv][0-9]+")
        ? crop.findStage(typed.substring(1) + "-leaf")
        : own;
  }
}
