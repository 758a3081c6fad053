package org.swathbook.rules.weather;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Stated;
import org.swathbook.program.SprayJob;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.DayFacts;
import org.swathbook.rules.DayRule;
import org.swathbook.rules.Findings;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;

/** Air that lies in layers carries fine droplets far and sets them down elsewhere. */
public final class InversionRule implements DayRule {
  private static final double AFTER_SUNRISE_H = 1;
  private static final double BEFORE_SUNSET_H = 2;
  private static final double STILL_MPH = 4;

  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("inversion"),
          Severity.BLOCK,
          "Does the air stand still in layers?",
          "An inversion was observed: a block where a partner's label forbids spraying into one, else a"
              + " warning. Not observed, and a label forbids it: a warning outside one hour after"
              + " sunrise to two hours before sunset with wind under 4 mph; an ask where hour, sun or"
              + " wind are not known. An ask where a label's word on it is not known and nobody looked.",
          List.of("the labels' own limits", Say.COMMON_PRACTICE),
          "an observed inversion with 2,4-D choline",
          "11:00 with wind of 6 mph and none observed");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(DayFacts facts, Findings out) {
    SprayJob job = facts.job();
    Optional<Boolean> seen = job.weather().inversion();
    List<ActiveUse> forbidding = new ArrayList<>();
    for (ActiveUse a : facts.pass().actives()) {
      Stated<Boolean> refused = a.terms().day().inversionRefused();
      if (refused.find().orElse(false)) {
        forbidding.add(a);
      } else if (refused.isUnknown() && !seen.equals(Optional.of(false))) {
        Unknowns.ofLabel(this, facts, a, "word on inversions on the label", "day.inversion", out);
      }
    }
    if (seen.equals(Optional.of(true))) {
      observed(facts, forbidding, out);
    } else if (seen.isEmpty() && !forbidding.isEmpty()) {
      notObserved(facts, forbidding.get(0), out);
    }
  }

  private void observed(DayFacts facts, List<ActiveUse> forbidding, Findings out) {
    out.add(
        this,
        forbidding.isEmpty() ? Severity.WARN : Severity.BLOCK,
        facts.pass().about(),
        () ->
            Text.of(
                    forbidding.isEmpty()
                        ? "An inversion was observed; droplets hang in it and drift."
                        : "An inversion was observed, and the label of "
                            + forbidding.get(0).ingredient().name()
                            + " forbids spraying into one.",
                    source(forbidding))
                .compared("an inversion", "none")
                .cleared("hours after the inversion has lifted, with wind from 4 mph"));
  }

  private static String source(List<ActiveUse> forbidding) {
    return forbidding.stream()
        .flatMap(a -> a.terms().day().inversionRefused().findSource().stream())
        .map(Object::toString)
        .findFirst()
        .orElse(Say.COMMON_PRACTICE);
  }

  private void notObserved(DayFacts facts, ActiveUse forbids, Findings out) {
    SprayJob job = facts.job();
    if (job.time().isEmpty() || facts.sun().isEmpty() || job.weather().windMph().isEmpty()) {
      List<String> missing = new ArrayList<>();
      if (job.time().isEmpty()) {
        missing.add("the hour");
      }
      if (facts.sun().isEmpty()) {
        missing.add("the place of the field");
      }
      if (job.weather().windMph().isEmpty()) {
        missing.add("the wind");
      }
      Unknowns.ofJob(this, facts, "whether an inversion stands, or " + Say.list(missing), out);
      return;
    }
    double since = SunHours.sinceSunrise(facts.sun().get(), job.time().get());
    double until = SunHours.toSunset(facts.sun().get(), job.time().get());
    boolean risky = since < AFTER_SUNRISE_H || until < BEFORE_SUNSET_H;
    if (risky && job.weather().windMph().getAsDouble() < STILL_MPH) {
      out.warn(
          this,
          facts.pass().about().withIngredient(forbids.ingredient().id()),
          () ->
              Text.of(
                      "Nobody looked for an inversion, and at "
                          + SunHours.clock(job.time().get())
                          + " with hardly any wind one is likely; the label of "
                          + forbids.ingredient().name()
                          + " forbids spraying into one.",
                      source(List.of(forbids)))
                  .compared(
                      SunHours.clock(job.time().get()),
                      SunHours.words(facts.sun().get(), AFTER_SUNRISE_H, BEFORE_SUNSET_H))
                  .cleared(
                      "smoke or two thermometers that show none, or the hours "
                          + SunHours.words(facts.sun().get(), AFTER_SUNRISE_H, BEFORE_SUNSET_H)));
    }
  }
}
