package org.swathbook.rules.timing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.WeedHeights;
import org.swathbook.growth.CohortSet;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.StandingSize;
import org.swathbook.measure.Quantity;
import org.swathbook.rules.About;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.Rated;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.rules.Where;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SiteControl;

/** Standing plants taller than the label of the partner that is counted on for them. */
public final class WeedTooTallRule implements PassRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("weed-too-tall"),
          Severity.WARN,
          "Are the standing weeds within the size that the label gives?",
          "The height that the house's share of the standing plants (90 %) do not exceed is above"
              + " the label's weed height for a partner that is counted on for this weed: one that"
              + " the response table rates as effective and that no listed resistance strikes. For"
              + " a weed that is no driver, only when no such partner is within its size, and once. Above one"
              + " and a half times the limit the expected control is given.",
          List.of(Say.COMMON_PRACTICE),
          "Palmer amaranth 8 in and glufosinate with 4 in on its label",
          "Palmer amaranth 8 in with clethodim in the tank, which is not counted on for it");

  private static final double MUCH_TOO_TALL = 1.5;

  @Override
  public RuleCard card() {
    return CARD;
  }

  /** A partner that is counted on for a weed, with its label's height. */
  private record Partner(ActiveUse use, double limitCm, String source) {}

  @Override
  public void judge(PassFacts facts, Findings out) {
    for (PassWeed weed : facts.pass().weeds()) {
      if (weed.stands() && weed.standsInAnyYear()) {
        judge(facts, weed, facts.pressure(weed.weed()), out);
      }
    }
  }

  private void judge(PassFacts facts, PassWeed weed, WeedPressure pressure, Findings out) {
    List<Partner> tooSmall = new ArrayList<>();
    int fine = 0;
    for (ActiveUse a : facts.actives()) {
      if (a.use().isEmpty() || !isCountedOn(facts, pressure, a.ingredient())) {
        continue;
      }
      Use use = a.use().get();
      if (use.weedHeights().isUnknown()) {
        out.ask(this, about(facts, weed, a), () -> missing(facts, a.ingredient(), use));
      } else if (use.weedHeights() instanceof Stated.Value<WeedHeights> v) {
        OptionalDouble limit = Rated.tallestCm(v.value(), pressure);
        if (limit.isPresent() && Quantity.exceeds(weed.p90Cm(), limit.getAsDouble())) {
          tooSmall.add(new Partner(a, limit.getAsDouble(), v.source().text()));
        } else {
          fine++;
        }
      } else {
        fine++;
      }
    }
    if (pressure.driver().isDriver()) {
      for (Partner p : tooSmall) {
        out.warn(this, about(facts, weed, p.use()), () -> text(facts, weed, pressure, p));
      }
    } else if (fine == 0 && !tooSmall.isEmpty()) {
      Partner largest =
          Collections.max(tooSmall, (a, b) -> Double.compare(a.limitCm(), b.limitCm()));
      out.warn(this, about(facts, weed, largest.use()), () -> text(facts, weed, pressure, largest));
    }
  }

  private static About about(PassFacts facts, PassWeed weed, ActiveUse a) {
    return facts
        .about()
        .withWeed(weed.weed())
        .withIngredient(a.ingredient().id())
        .withProduct(a.dose().product().id());
  }

  private static boolean isCountedOn(PassFacts facts, WeedPressure pressure, Ingredient active) {
    return !Rated.isResisted(pressure, active)
        && Rated.foliarPct(facts, pressure, active).orElse(0)
            >= 100 * facts.book().house().effectiveSite();
  }

  private static Lookup missing(PassFacts facts, Ingredient active, Use use) {
    return new Lookup(
        "weed height limit of " + active.name() + " in " + facts.traces().crop().name(),
        Where.use(active, use, "weedHeight", "weeds controlled, by size"));
  }

  private static Text text(PassFacts facts, PassWeed weed, WeedPressure pressure, Partner p) {
    Ingredient active = p.use().ingredient();
    Optional<SiteControl> site =
        weed.foliar().stream().filter(s -> s.site().equals(active.site())).findFirst();
    String expected =
        weed.p90Cm() > MUCH_TOO_TALL * p.limitCm() && site.isPresent()
            ? " Expected control by it alone: " + Say.pct(Math.rint(site.get().controlPct())) + "."
            : "";
    return Text.of(
            Say.start(pressure.weed().name())
                + ": "
                + Say.share(facts.book().house().sizePercentile())
                + " of the plants are up to "
                + tall(weed.p90Cm(), p.limitCm())
                + " tall at this pass; the label of "
                + active.name()
                + " says up to "
                + Say.inches(p.limitCm())
                + "."
                + expected,
            p.source())
        .compared(tall(weed.p90Cm(), p.limitCm()), Say.inches(p.limitCm()))
        .cleared(remedy(facts, lastDayInSize(facts, pressure, p.limitCm())));
  }

  /** On the day of spraying what an earlier one would have done is past, and is no remedy. */
  private static String remedy(PassFacts facts, Optional<LocalDate> lastDay) {
    String partner = "a partner whose label allows larger weeds";
    if (facts.job().isPresent()) {
      return partner
          + lastDay.map(d -> "; they were within the height until " + Say.date(d)).orElse("");
    }
    return lastDay
            .map(d -> "a pass by " + Say.date(d))
            .orElse("a pass before these come up or a burndown that takes them")
        + ", or "
        + partner;
  }

  /** Never the figure of the limit itself, which rounding would make of a plant a hair above it. */
  private static String tall(double cm, double limitCm) {
    String inches = Say.inches(cm);
    return inches.equals(Say.inches(limitCm)) ? "a little more than " + inches : inches;
  }

  private static int indexOf(PassFacts facts, WeedPressure pressure) {
    List<WeedPressure> weeds = facts.traces().weeds();
    for (int w = 0; w < weeds.size(); w++) {
      if (weeds.get(w).weed().id().equals(pressure.weed().id())) {
        return w;
      }
    }
    return -1;
  }

  /**
   * The last day before the pass on which the unsprayed plants were within a height, median over
   * the years; empty when that was before planting. Plants that somebody has seen were on the days
   * before as much smaller as they grow since, whatever the model had there.
   */
  private static Optional<LocalDate> lastDayInSize(
      PassFacts facts, WeedPressure pressure, double limitCm) {
    int weed = indexOf(facts, pressure);
    if (weed < 0) {
      return Optional.empty();
    }
    double percentile = facts.book().house().sizePercentile();
    List<LocalDate> days = new ArrayList<>();
    for (int y = 0; y < facts.traces().years().size(); y++) {
      SeasonTrace trace = facts.traces().years().get(y);
      int day = Math.min(facts.pass().timing().years().get(y).day(), trace.days() - 1);
      while (day > 0 && Quantity.exceeds(heightCm(trace, weed, day, percentile), limitCm)) {
        day--;
      }
      days.add(trace.bookDateOf(day));
    }
    days.sort(LocalDate::compareTo);
    return Optional.of(days.get((days.size() - 1) / 2))
        .filter(d -> !d.isBefore(facts.field().plantDate()));
  }

  private static double heightCm(SeasonTrace trace, int weed, int day, double percentile) {
    CohortSet cohorts = trace.cohorts(weed);
    int seen = cohorts.firstSeenOn().orElse(0);
    return day >= seen
        ? StandingSize.percentileCm(trace, weed, day, percentile).orElse(0)
        : cohorts.heightCmBefore(
            StandingSize.percentileCm(trace, weed, seen, percentile).orElse(0), seen, day);
  }
}
