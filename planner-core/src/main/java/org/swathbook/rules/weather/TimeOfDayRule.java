package org.swathbook.rules.weather;

import java.util.List;
import org.swathbook.catalog.DayTerms.SprayHours;
import org.swathbook.catalog.Stated;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.DayFacts;
import org.swathbook.rules.DayRule;
import org.swathbook.rules.Findings;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;

/** Hours by the sun between which a label allows spraying. */
public final class TimeOfDayRule implements DayRule {
  private static final double ROUNDING_H = 1e-6;

  /**
   * From sunrise, and to sunset: hours between which no label that we know of is shut (University
   * of Minnesota Extension, glufosinate 3 to 4 hours).
   */
  private static final double SURELY_OPEN_H = 4;

  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("time-of-day"),
          Severity.BLOCK,
          "Is the hour one that the labels allow?",
          "By the sun at the field, the time of the job lies before or after the hours of a partner's"
              + " label: a block, a warning where the label advises. An ask where a label has hours and"
              + " time or place are not known; and for hours that are not known of site 10 and of site"
              + " 4 over a crop with its trait, unless it is surely midday.",
          List.of(
              "the labels' own hours",
              "University of Minnesota Extension, glufosinate 3 to 4 hours from sunrise and sunset",
              "sunrise and sunset after NOAA's equations"),
          "dicamba over soybean half an hour before sunset",
          "glufosinate at 11:00");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(DayFacts facts, Findings out) {
    boolean needed = false;
    for (ActiveUse a : facts.pass().actives()) {
      Stated<SprayHours> hours = a.terms().day().hours();
      if (hours.find().isPresent()) {
        needed = true;
        if (facts.job().time().isPresent() && facts.sun().isPresent()) {
          judge(facts, a, hours, out);
        }
      } else if (hours.isUnknown() && mayHaveHours(facts, a) && !isMidday(facts)) {
        Unknowns.ofLabel(this, facts, a, "hours of the day on the label", "day.hours", out);
      }
    }
    if (needed && facts.job().time().isEmpty()) {
      Unknowns.ofJob(this, facts, "time of spraying", out);
    }
    if (needed && facts.sun().isEmpty()) {
      Unknowns.ofJob(this, facts, "sunrise and sunset: lat, lon and state in fields.csv", out);
    }
  }

  /** Whether labels of its like name hours. */
  private static boolean mayHaveHours(DayFacts facts, ActiveUse a) {
    int site = a.ingredient().site().number();
    boolean overTrait =
        facts.pass().isInCrop()
            && a.use().flatMap(u -> u.traits().find()).filter(t -> !t.isEmpty()).isPresent();
    return a.ingredient().hasFoliarActivity() && (site == 10 || site == 4 && overTrait);
  }

  private static boolean isMidday(DayFacts facts) {
    if (facts.job().time().isEmpty() || facts.sun().isEmpty()) {
      return false;
    }
    var time = facts.job().time().get();
    return SunHours.sinceSunrise(facts.sun().get(), time) >= SURELY_OPEN_H
        && SunHours.toSunset(facts.sun().get(), time) >= SURELY_OPEN_H;
  }

  private void judge(DayFacts facts, ActiveUse a, Stated<SprayHours> hours, Findings out) {
    SprayHours h = hours.find().orElseThrow();
    var sun = facts.sun().orElseThrow();
    var time = facts.job().time().orElseThrow();
    boolean early = SunHours.sinceSunrise(sun, time) < h.afterSunrise() - ROUNDING_H;
    boolean late = SunHours.toSunset(sun, time) < h.beforeSunset() - ROUNDING_H;
    if (early || late) {
      String open = SunHours.words(sun, h.afterSunrise(), h.beforeSunset());
      out.add(
          this,
          h.advice() ? Severity.WARN : Severity.BLOCK,
          facts.pass().about().withIngredient(a.ingredient().id()),
          () ->
              Text.of(
                      SunHours.clock(time)
                          + " is "
                          + (early ? "too early" : "too late")
                          + " for "
                          + a.ingredient().name()
                          + ", which is sprayed from "
                          + open
                          + " on that day at this field.",
                      Say.source(hours))
                  .compared(SunHours.clock(time), open)
                  .cleared("the hours " + open));
    }
  }
}
