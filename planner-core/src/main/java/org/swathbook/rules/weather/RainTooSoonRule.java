package org.swathbook.rules.weather;

import java.util.List;
import java.util.OptionalDouble;
import org.swathbook.catalog.Foliar;
import org.swathbook.catalog.Stated;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.program.SprayWeather;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.DayFacts;
import org.swathbook.rules.DayRule;
import org.swathbook.rules.Findings;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.season.outcome.PassWeed;

/** Rain before leaves have taken the spray up, or rain that carries it off the field. */
public final class RainTooSoonRule implements DayRule {
  /** Rain of a forecast that is taken to run off, inches (default). */
  private static final double RUNOFF_IN = 0.5;

  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("rain-too-soon"),
          Severity.BLOCK,
          "Does rain wash it off before it is taken up?",
          "Rain comes within the rain-free hours of a partner on leaves: a warning where a driver weed"
              + " that stands depends on its site, else a note. A block where a label forbids spraying"
              + " with runoff ahead within some hours and the forecast brings half an inch in them."
              + " Asks for the hours to rain, the forecast, rain-free hours of labels that are not"
              + " known, and, with half an inch ahead in two days, for what the label says of it where"
              + " the active is of site 4 or is kept from water.",
          List.of("the labels' own hours", "0.5 in as rain that runs off: default"),
          "2,4-D choline with an inch of rain in the next 48 hours",
          "clethodim with rain in 3 hours");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(DayFacts facts, Findings out) {
    SprayWeather w = facts.job().weather();
    boolean needsHours = false;
    boolean needsForecast = false;
    for (ActiveUse a : facts.pass().actives()) {
      if (a.terms().foliar().isUnknown()) {
        Unknowns.ofLabel(
            this, facts, a, "activity through leaves and rain-free hours", "foliar", out);
      }
      if (a.terms().foliar() instanceof Stated.Value<Foliar> v) {
        Stated<Double> hours = v.value().rainfastHours();
        if (hours.isUnknown()) {
          Unknowns.ofLabel(this, facts, a, "rain-free hours", "foliar.rainfast", out);
        } else if (hours.find().isPresent()) {
          needsHours |= isUnknown(w, hours.find().get());
          rainfast(facts, a, hours, w, out);
        }
      }
      Stated<Double> runoff = a.terms().day().runoffRainHours();
      if (runoff.find().isPresent()) {
        needsForecast |=
            runoff.find().get() > 24 ? w.rainNext48hIn().isEmpty() : ahead(w, 1).isEmpty();
        runoff(facts, a, runoff, w, out);
      } else if (runoff.isUnknown() && runsIntoWater(a) && isMuchRainAhead(w)) {
        Unknowns.ofLabel(
            this, facts, a, "word on rain that runs off, on the label", "day.runoffRain", out);
      }
    }
    if (needsHours) {
      Unknowns.ofJob(this, facts, "hours to the next rain", out);
    }
    if (needsForecast) {
      Unknowns.ofJob(this, facts, "rain forecast for the next 24 and 48 hours", out);
    }
  }

  private void rainfast(
      DayFacts facts, ActiveUse a, Stated<Double> hours, SprayWeather w, Findings out) {
    double needed = hours.find().orElseThrow();
    if (w.hoursToRain().isEmpty() || !Quantity.exceeds(needed, w.hoursToRain().getAsDouble())) {
      return;
    }
    double left = w.hoursToRain().getAsDouble();
    out.add(
        this,
        isCountedOn(facts, a) ? Severity.WARN : Severity.NOTE,
        facts.pass().about().withIngredient(a.ingredient().id()),
        () ->
            Text.of(
                    Say.start(a.ingredient())
                        + " needs "
                        + Numbers.decimals(needed, 1)
                        + (needed == 1 ? " hour" : " hours")
                        + " without rain; it comes in "
                        + Numbers.decimals(left, 1)
                        + ".",
                    Say.source(hours))
                .compared(Numbers.decimals(left, 1) + " h", Numbers.decimals(needed, 1) + " h")
                .cleared("a day without rain for so long, or a partner that is taken up sooner"));
  }

  /** Whether nobody knows if so many hours stay dry. */
  private static boolean isUnknown(SprayWeather w, double hours) {
    return w.hoursToRain().isEmpty()
        && (w.dryHours().isEmpty() || Quantity.exceeds(hours, w.dryHours().getAsDouble()));
  }

  private static boolean isCountedOn(DayFacts facts, ActiveUse a) {
    for (PassWeed w : facts.pass().pass().weeds()) {
      if (w.stands()
          && facts.pass().pressure(w.weed()).driver().isDriver()
          && w.foliar().stream()
              .anyMatch(
                  s -> s.site().equals(a.ingredient().site()) && (s.effective() || s.half()))) {
        return true;
      }
    }
    return false;
  }

  /** A growth regulator, or an active whose label keeps away from water or may do so. */
  private static boolean runsIntoWater(ActiveUse a) {
    return a.ingredient().site().number() == 4
        || a.terms().setbacks().isUnknown()
        || a.terms().setbacks().find().filter(s -> !s.feet().isEmpty()).isPresent();
  }

  private static boolean isMuchRainAhead(SprayWeather w) {
    OptionalDouble inches = w.rainNext48hIn().isPresent() ? w.rainNext48hIn() : w.rainNext24hIn();
    return inches.isPresent() && !Quantity.exceeds(RUNOFF_IN, inches.getAsDouble());
  }

  /** Inches of the forecast within so many hours; the longer forecast where none is so short. */
  private static OptionalDouble ahead(SprayWeather w, double hours) {
    boolean shorter = hours <= 24 || w.rainNext48hIn().isEmpty();
    return shorter && w.rainNext24hIn().isPresent() ? w.rainNext24hIn() : w.rainNext48hIn();
  }

  private void runoff(
      DayFacts facts, ActiveUse a, Stated<Double> runoff, SprayWeather w, Findings out) {
    double hours = runoff.find().orElseThrow();
    OptionalDouble inches = ahead(w, hours);
    if (inches.isPresent() && !Quantity.exceeds(RUNOFF_IN, inches.getAsDouble())) {
      out.block(
          this,
          facts.pass().about().withIngredient(a.ingredient().id()),
          () ->
              Text.of(
                      "The forecast brings "
                          + Numbers.decimals(inches.getAsDouble(), 2)
                          + " in of rain, and the label of "
                          + a.ingredient().name()
                          + " forbids spraying when rain that runs off is ahead within "
                          + Numbers.decimals(hours, 0)
                          + " hours.",
                      Say.source(runoff))
                  .compared(
                      Numbers.decimals(inches.getAsDouble(), 2) + " in",
                      "less than " + RUNOFF_IN + " in within " + Numbers.decimals(hours, 0) + " h")
                  .cleared("a day with less rain ahead"));
    }
  }
}
