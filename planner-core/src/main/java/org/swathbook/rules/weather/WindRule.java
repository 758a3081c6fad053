package org.swathbook.rules.weather;

import java.util.List;
import java.util.OptionalDouble;
import org.swathbook.catalog.Limit;
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

/** Wind against what each label allows, and against the house's own range. */
public final class WindRule implements DayRule {
  /**
   * Share of a label's highest wind from which a forecast leaves no room; its gusts already are
   * room, and count against the limit itself.
   */
  private static final double NEAR = 0.8;

  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("wind"),
          Severity.BLOCK,
          "Is the wind within what every partner allows?",
          "The wind, or its gusts where they are given, is above the most that a partner's label allows,"
              + " or the wind is below the least. A warning where a wind that is only forecast comes to"
              + " 80 % of the most. Where a partner's label is not known to name a wind, a"
              + " warning outside the house's range. An ask where the wind is not known.",
          List.of("the labels' own limits", "house rule wind", "80 % of a forecast: default"),
          "14 mph with dicamba, which allows 10",
          "7 mph with dicamba; 10 mph, the very limit");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(DayFacts facts, Findings out) {
    SprayWeather w = facts.job().weather();
    boolean unlimited = false;
    for (ActiveUse a : facts.pass().actives()) {
      Stated<Limit> limit = a.terms().day().windMph();
      if (limit.find().isPresent()) {
        judge(facts, a, limit, w, out);
      } else {
        unlimited = true;
      }
    }
    if (w.windMph().isEmpty()) {
      Unknowns.ofJob(this, facts, "wind at the field in mph", out);
    } else if (unlimited) {
      byHouse(facts, top(w), out);
    }
  }

  /** What counts against a highest wind; below zero when neither wind nor gusts are known. */
  private static double top(SprayWeather w) {
    return Math.max(w.windMph().orElse(-1), w.gustMph().orElse(-1));
  }

  private void judge(
      DayFacts facts, ActiveUse a, Stated<Limit> limit, SprayWeather w, Findings out) {
    Limit allowed = limit.find().orElseThrow();
    double most = top(w);
    Limit above = new Limit(OptionalDouble.empty(), false, allowed.most(), allowed.mostExcluded());
    Limit below =
        new Limit(allowed.least(), allowed.leastExcluded(), OptionalDouble.empty(), false);
    boolean tooMuch = most >= 0 && !above.allows(most);
    boolean tooLittle = w.windMph().isPresent() && !below.allows(w.windMph().getAsDouble());
    if (!tooMuch && !tooLittle) {
      near(facts, a, limit, out);
      return;
    }
    double met = tooMuch ? most : w.windMph().orElseThrow();
    out.block(
        this,
        facts.pass().about().withIngredient(a.ingredient().id()),
        () ->
            Text.of(
                    "Wind of "
                        + mph(met)
                        + " is outside what the label of "
                        + a.ingredient().name()
                        + " allows, "
                        + words(allowed)
                        + ".",
                    Say.source(limit))
                .compared(mph(met), words(allowed))
                .cleared("hours with wind of " + words(allowed)));
  }

  private void near(DayFacts facts, ActiveUse a, Stated<Limit> limit, Findings out) {
    SprayWeather w = facts.job().weather();
    Limit allowed = limit.find().orElseThrow();
    if (!w.windForecast() || w.windMph().isEmpty() || allowed.most().isEmpty()) {
      return;
    }
    double mph = w.windMph().getAsDouble();
    double from = NEAR * allowed.most().getAsDouble();
    if (!Quantity.exceeds(from, mph)) {
      out.warn(
          this,
          facts.pass().about().withIngredient(a.ingredient().id()),
          () ->
              Text.of(
                      "Wind of "
                          + mph(mph)
                          + " is forecast, 80 % or more of what the label of "
                          + a.ingredient().name()
                          + " allows; the wind at the field may be above it.",
                      Say.source(limit))
                  .compared(mph(mph), words(allowed))
                  .cleared(
                      "hours with less than "
                          + mph(from)
                          + " forecast, or the wind measured at the field when you spray"));
    }
  }

  private static String words(Limit limit) {
    if (limit.least().isPresent() && limit.most().isPresent()) {
      return Numbers.decimals(limit.least().getAsDouble(), 2)
          + " to "
          + mph(limit.most().getAsDouble());
    }
    return limit.most().isPresent()
        ? "at most " + mph(limit.most().getAsDouble())
        : "at least " + mph(limit.least().orElse(0));
  }

  private static String mph(double value) {
    return Numbers.decimals(value, 3) + " mph";
  }

  private void byHouse(DayFacts facts, double mph, Findings out) {
    double least = facts.pass().book().house().windMinMph();
    double most = facts.pass().book().house().windMaxMph();
    if (mph > most * (1 + 1e-9)
        || facts.job().weather().windMph().orElseThrow() < least * (1 - 1e-9)) {
      String range = Numbers.decimals(least, 0) + " to " + Numbers.decimals(most, 0) + " mph";
      out.warn(
          this,
          facts.pass().about(),
          () ->
              Text.of(
                      "Wind of " + mph(mph) + " is outside the house's " + range + ".",
                      "house rule wind")
                  .compared(mph(mph), range)
                  .cleared("hours with wind of " + range));
    }
  }
}
