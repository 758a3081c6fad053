package org.swathbook.rules.weather;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.swathbook.catalog.DayTerms.TemperatureLimit;
import org.swathbook.catalog.Stated;
import org.swathbook.control.ColdDay;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
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

/** Heat and cold against labels, and against what leaves take up and crops stand. */
public final class TemperatureRule implements DayRule {
  private static final double HOT_F = 90;

  /**
   * Above which labels of growth regulators begin to have limits: University of Illinois Bulletin
   * 1999, an amine in the place of an ester where 80 to 85 F are near.
   */
  private static final double WARM_F = 80;

  /** Mean of three days below which weeds hardly grow. */
  private static final double STILL_F = 50;

  /** A day as warm as this tells that no cold spell lasts (default, ours). */
  private static final double SURELY_OVER_F = 70;

  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("temperature"),
          Severity.BLOCK,
          "Is it too hot or too cold for a partner?",
          "The temperature now or the day's forecast high is above what a label allows, or now below it:"
              + " a block, a warning where the label advises. Else a warning above 90 F with a contact"
              + " active over a crop that is up or an auxin on leaves, and on a day under 60 F or after a night under 40 F"
              + " with sites 9, 10 and 27 on leaves; and where the three days before, or the day and the"
              + " two after, have a mean below 50 F and weeds stand that a systemic active, or one of"
              + " those sites, is to enter by the leaves. An ask where a stated limit meets no"
              + " temperature, for the three days before on a day that stays below 70 F, and for a"
              + " label's limit that is not known: of site 4 on leaves above 80 F, of a contact active"
              + " over the crop above 90 F.",
          List.of(
              "the labels' own limits",
              "University of Illinois Bulletin 1999, 2,4-D ester near 80 to 85 F",
              Say.COMMON_PRACTICE),
          "dicamba over soybean with a forecast high of 96 F, where 95 F are the most",
          "the same at 78 F");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(DayFacts facts, Findings out) {
    SprayWeather w = facts.job().weather();
    OptionalDouble high = high(w);
    boolean asked = false;
    for (ActiveUse a : facts.pass().actives()) {
      Stated<TemperatureLimit> limit = a.terms().day().temperature();
      if (limit.find().isPresent()) {
        asked |= w.highF().isEmpty();
        if (high.isPresent()) {
          label(facts, a, limit, high.getAsDouble(), w, out);
        }
      } else if (limit.isUnknown()
          && high.isPresent()
          && mayBeTooHot(facts, a, high.getAsDouble())) {
        Unknowns.ofLabel(
            this, facts, a, "highest temperature on the label", "day.temperature", out);
      }
    }
    boolean matters = has(facts, a -> mayBurnTheCrop(facts, a) || isAuxin(a) || isSlow(a));
    if (asked || w.highF().isEmpty() && matters) {
      Unknowns.ofJob(
          this,
          facts,
          w.temperatureF().isPresent()
              ? "the day's forecast high"
              : "temperature now, and the day's forecast high",
          out);
    }
    practice(facts, high, w, out);
    coldSpell(facts, out);
  }

  /** Heat at which some labels forbid an active like this one on leaves. */
  private static boolean mayBeTooHot(DayFacts facts, ActiveUse a, double highF) {
    return a.ingredient().hasFoliarActivity()
        && (isAuxin(a) && highF > WARM_F || mayBurnTheCrop(facts, a) && highF > HOT_F);
  }

  /** Before the crop is up there is none to burn. */
  private static boolean mayBurnTheCrop(DayFacts facts, ActiveUse a) {
    return a.ingredient().isContact() && facts.pass().isInCrop();
  }

  private static OptionalDouble high(SprayWeather w) {
    if (w.temperatureF().isEmpty()) {
      return w.highF();
    }
    return OptionalDouble.of(
        Math.max(w.temperatureF().getAsDouble(), w.highF().orElse(Double.NEGATIVE_INFINITY)));
  }

  private void label(
      DayFacts facts,
      ActiveUse a,
      Stated<TemperatureLimit> limit,
      double highF,
      SprayWeather w,
      Findings out) {
    TemperatureLimit t = limit.find().orElseThrow();
    double lowF = w.temperatureF().orElse(highF);
    boolean hot = t.celsius().most().isPresent() && !t.celsius().allows(inside(t, highF));
    boolean cold = t.celsius().least().isPresent() && !t.celsius().allows(below(t, lowF));
    if (!hot && !cold) {
      return;
    }
    double met = hot ? highF : lowF;
    double bound =
        Unit.FAHRENHEIT.fromSi((hot ? t.celsius().most() : t.celsius().least()).orElseThrow());
    String allowed = (hot ? "at most " : "at least ") + degrees(bound);
    out.add(
        this,
        t.advice() ? Severity.WARN : Severity.BLOCK,
        facts.pass().about().withIngredient(a.ingredient().id()),
        () ->
            Text.of(
                    "At "
                        + degrees(met)
                        + " the label of "
                        + a.ingredient().name()
                        + (t.advice() ? " advises not to spray: " : " forbids to spray: ")
                        + allowed
                        + ".",
                    Say.source(limit))
                .compared(degrees(met), allowed)
                .cleared(hot ? "a cooler day" : "a warmer hour or day"));
  }

  /** A heat as it meets the upper end alone. */
  private static double inside(TemperatureLimit t, double f) {
    return Math.max(Unit.FAHRENHEIT.toSi(f), t.celsius().least().orElse(-273) + 1e-6);
  }

  private static double below(TemperatureLimit t, double f) {
    return Math.min(Unit.FAHRENHEIT.toSi(f), t.celsius().most().orElse(1000) - 1e-6);
  }

  private void practice(DayFacts facts, OptionalDouble high, SprayWeather w, Findings out) {
    boolean burns = has(facts, a -> mayBurnTheCrop(facts, a));
    boolean moves = has(facts, TemperatureRule::isAuxin);
    if (high.isPresent() && high.getAsDouble() > HOT_F && (burns || moves)) {
      warn(
          facts,
          degrees(high.getAsDouble()),
          "at most 90 F",
          "Above 90 F "
              + (burns ? "contact actives burn crops" : "")
              + (burns && moves ? " and " : "")
              + (moves ? "auxins move as vapor" : "")
              + ".",
          "a cooler day, or the morning",
          out);
    }
    boolean coldDay = w.highF().isPresent() && w.highF().getAsDouble() < ColdDay.DAY_F;
    boolean coldNight =
        w.coldestNightF().isPresent() && w.coldestNightF().getAsDouble() < ColdDay.NIGHT_F;
    if ((coldDay || coldNight) && has(facts, TemperatureRule::isSlow)) {
      warn(
          facts,
          coldDay
              ? degrees(w.highF().getAsDouble()) + " by day"
              : degrees(w.coldestNightF().getAsDouble()) + " by night",
          "days from 60 F, nights from 40 F",
          "Weeds that stand still in the cold take up sites 9, 10 and 27 poorly.",
          "three days of a mean above 50 F",
          out);
    }
  }

  /** Weeds that do not grow move nothing to where it would kill them. */
  private void coldSpell(DayFacts facts, Findings out) {
    boolean weedsStand =
        facts.pass().pass().weeds().stream().anyMatch(PassWeed::stands)
            || !facts.job().scouted().weedHeightCm().isEmpty();
    if (!weedsStand || !has(facts, a -> isSlow(a) || !a.ingredient().isContact())) {
      return;
    }
    ColdSpell spell = ColdSpell.around(facts);
    if (isCold(spell.pastF())) {
      still(facts, spell.pastF().getAsDouble(), "the three days before", out);
    } else if (isCold(spell.nextF())) {
      still(facts, spell.nextF().getAsDouble(), "that day and the two after", out);
    }
    OptionalDouble high = facts.job().weather().highF();
    if (spell.pastF().isEmpty() && high.isPresent() && high.getAsDouble() < SURELY_OVER_F) {
      Unknowns.ofJob(this, facts, "mean temperature of the three days before", out);
    }
  }

  private static boolean isCold(OptionalDouble meanF) {
    return meanF.isPresent() && Quantity.exceeds(STILL_F, meanF.getAsDouble());
  }

  private void still(DayFacts facts, double meanF, String when, Findings out) {
    warn(
        facts,
        degrees(meanF),
        "a mean of 50 F over three days",
        "With a mean of "
            + degrees(meanF)
            + " over "
            + when
            + " weeds hardly grow, and what is to move in them does not.",
        "three days of a mean from 50 F on",
        out);
  }

  private void warn(
      DayFacts facts, String actual, String limit, String message, String remedy, Findings out) {
    out.warn(
        this,
        facts.pass().about(),
        () -> Text.of(message, Say.COMMON_PRACTICE).compared(actual, limit).cleared(remedy));
  }

  private static String degrees(double f) {
    return Numbers.decimals(f, 2) + " F";
  }

  private static boolean isAuxin(ActiveUse a) {
    return site(a) == 4;
  }

  private static boolean isSlow(ActiveUse a) {
    return ColdDay.slows(a.ingredient());
  }

  private static int site(ActiveUse a) {
    return a.ingredient().site().number();
  }

  private static boolean has(DayFacts facts, Predicate<ActiveUse> what) {
    return facts.pass().actives().stream()
        .filter(a -> a.ingredient().hasFoliarActivity())
        .anyMatch(what);
  }
}
