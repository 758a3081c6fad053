package org.swathbook.rules.timing;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.swathbook.catalog.Residual;
import org.swathbook.measure.Inches;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.season.outcome.LayerSpan;
import org.swathbook.season.outcome.WalkedPasses;

/** A layer that waits too long for the rain that carries it to the seeds. */
public final class NoActivatingRainRule implements PassRule {
  private static final int DAYS = 10;
  private static final int WEEK = 7;
  private static final int TWO_WEEKS = 14;

  /** Least share of the weather years in which a layer should start in time (default). */
  private static final double LEAST_SHARE = 0.6;

  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("no-activating-rain"),
          Severity.WARN,
          "Will rain come to carry the soil active down?",
          "In a plan: the layer of the pass on a driver weed starts within 10 days of spraying in fewer"
              + " than 60 % of the weather years; else a note in how many it does within 7 and 14 days."
              + " At the loading pad with a forecast: the rain of the"
              + " next ten days is less than a soil active needs; without a forecast, and on"
              + " irrigated fields, which a pivot helps, a note.",
          List.of(Say.COMMON_PRACTICE),
          "S-metolachlor with 0.1 in of rain in the forecast of ten days",
          "S-metolachlor with 1 in of rain in the forecast of ten days");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(PassFacts facts, Findings out) {
    if (!countsOnSoil(facts)) {
      return;
    }
    if (facts.job().isPresent()) {
      byForecast(facts, out);
    } else {
      byYears(facts, out);
    }
  }

  /** Whether the tank has an effective soil site on a driver weed. */
  private static boolean countsOnSoil(PassFacts facts) {
    return facts.pass().weeds().stream()
        .anyMatch(w -> w.effectiveSoilSites() > 0 && facts.pressure(w.weed()).driver().isDriver());
  }

  private void byForecast(PassFacts facts, Findings out) {
    OptionalDouble needed =
        facts.actives().stream()
            .flatMap(a -> a.ingredient().residual().find().stream())
            .mapToDouble(Residual::activatingRainMm)
            .max();
    OptionalDouble ahead = facts.job().orElseThrow().weather().rainNext10dIn();
    if (needed.isEmpty() || needed.getAsDouble() == 0) {
      return;
    }
    double inches = Inches.ofMm(needed.getAsDouble());
    if (ahead.isEmpty()) {
      out.note(
          this,
          facts.about(),
          () ->
              Text.of(
                  "The soil actives need "
                      + Numbers.decimals(inches, 2)
                      + " in of rain to work; no forecast is given.",
                  "the actives' activating rain in the catalog"));
    } else if (Quantity.exceeds(inches, ahead.getAsDouble()) && facts.field().irrigated()) {
      out.note(
          this,
          facts.about(),
          () ->
              Text.of(
                      needAndRain(
                              most(facts, needed.getAsDouble()),
                              inches,
                              "rain or irrigation",
                              ahead)
                          + " of rain, the rest is the irrigation's.",
                      "the actives' activating rain in the catalog")
                  .cleared(
                      Numbers.decimals(inches, 1) + " in of irrigation within " + WEEK + " days"));
    } else if (Quantity.exceeds(inches, ahead.getAsDouble())) {
      out.warn(
          this,
          facts.about(),
          () ->
              Text.of(
                      needAndRain(most(facts, needed.getAsDouble()), inches, "rain", ahead) + ".",
                      "the actives' activating rain in the catalog")
                  .compared(
                      Numbers.decimals(ahead.getAsDouble(), 2) + " in",
                      Numbers.decimals(inches, 2) + " in")
                  .cleared(
                      Numbers.decimals(inches, 1)
                          + " in of irrigation, a rotary hoe after a week, or an active that needs"
                          + " less"));
    }
  }

  private static String most(PassFacts facts, double mm) {
    return facts.actives().stream()
        .map(ActiveUse::ingredient)
        .filter(i -> i.residual().find().map(r -> r.activatingRainMm() == mm).orElse(false))
        .map(Say::start)
        .findFirst()
        .orElseThrow();
  }

  /** What the active that needs most needs, and what comes of it in the next ten days. */
  private static String needAndRain(
      String active, double inches, String of, OptionalDouble aheadInches) {
    return active
        + " needs "
        + Numbers.decimals(inches, 2)
        + " in of "
        + of
        + " to work; the next ten days bring "
        + Numbers.decimals(aheadInches.getAsDouble(), 2)
        + " in";
  }

  private void byYears(PassFacts facts, Findings out) {
    int made = 0;
    int inTime = 0;
    int inAWeek = 0;
    int inTwo = 0;
    for (WalkedPasses.Year y : facts.season().years()) {
      int sprayed = y.passDays().get(facts.pass().index());
      if (sprayed >= 0) {
        made++;
        OptionalInt starts =
            y.layers().stream()
                .filter(l -> l.pass() == facts.pass().index())
                .filter(l -> facts.pressure(l.weed()).driver().isDriver())
                .mapToInt(LayerSpan::fromDay)
                .min();
        int days = starts.isPresent() ? starts.getAsInt() - sprayed : Integer.MAX_VALUE;
        inTime += days <= DAYS ? 1 : 0;
        inAWeek += days <= WEEK ? 1 : 0;
        inTwo += days <= TWO_WEEKS ? 1 : 0;
      }
    }
    int of = made;
    int met = inTime;
    int week = inAWeek;
    int two = inTwo;
    if (made > 0 && inTime < LEAST_SHARE * made) {
      out.warn(
          this,
          facts.about(),
          () ->
              Text.of(
                      "The layer of this pass starts within "
                          + DAYS
                          + " days in "
                          + met
                          + " of "
                          + of
                          + " weather years.",
                      "weather of the station; the share is a default")
                  .compared(met + " of " + of + " years", Say.share(LEAST_SHARE) + " of the years")
                  .cleared(
                      "irrigation after spraying, an earlier pass, or an active that needs less"
                          + " rain"));
    } else if (made > 0) {
      out.note(
          this,
          facts.about(),
          () ->
              Text.of(
                  "The layer of this pass starts within "
                      + WEEK
                      + " days in "
                      + week
                      + " and within "
                      + TWO_WEEKS
                      + " in "
                      + two
                      + " of "
                      + of
                      + " weather years.",
                  "weather of the station"));
    }
  }
}
