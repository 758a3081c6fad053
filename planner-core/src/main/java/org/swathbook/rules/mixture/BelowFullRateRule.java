package org.swathbook.rules.mixture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.HouseRules;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Source;
import org.swathbook.measure.Basis;
import org.swathbook.measure.Money;
import org.swathbook.program.Doses;
import org.swathbook.rules.About;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Findings;
import org.swathbook.rules.HouseTests;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.Rated;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.season.outcome.PassWeed;

/** A site that a weed is left to at less than its full rate. */
public final class BelowFullRateRule implements PassRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("below-full-rate"),
          Severity.WARN,
          "Is a site counted on at less than its full rate?",
          "A partner that is counted on for a driver weed stays below the full rate for the size of"
              + " the weeds and the soil, and fewer than two sites at full rate stand beside it. On"
              + " plants up to half the height of the label (default, ours) the low end of its range"
              + " is full, on taller ones the middle; where the label has a least rate for the weed,"
              + " that one, whatever less it allows on a light soil; in the soil the low rate of the"
              + " soil's row. Of a"
              + " driver weed with any listed resistance every partner that does half or more wants"
              + " its full rate. A note for other weeds. What it names, rate-below-use does not name"
              + " again.",
          List.of("Norsworthy et al. 2012, best management practices: full labeled rates"),
          "glufosinate 0.40 lb ai/acre on Palmer amaranth 4 in tall, where the label has 0.53 to 0.66",
          "pyroxasulfone at the low rate of the row for a sandy loam");

  /** A partner that does less than this to a weed is not there for it (percent). */
  private static final double HALF_PCT = 50;

  private static final String ELSEWHERE =
      "smaller plants, or a partner of another site at its full rate";

  @Override
  public RuleCard card() {
    return CARD;
  }

  /** A partner at a rate, and whether it is counted on alone. */
  private record Partner(FullRate rate, boolean counted) {}

  @Override
  public void judge(PassFacts facts, Findings out) {
    for (PassWeed weed : facts.pass().weeds()) {
      WeedPressure pressure = facts.pressure(weed.weed());
      // A driver weed counts in the years in which it stands, however few they are.
      boolean meets = weed.standsInAnyYear() && (weed.stands() || pressure.driver().isDriver());
      List<FullRate> low = new ArrayList<>();
      if (meets) {
        low.addAll(low(pressure, foliar(facts, weed, pressure)));
      }
      if (HouseTests.isLayer(facts.season(), facts.pass().index(), weed.weed())) {
        low.addAll(low(pressure, soil(facts, pressure)));
      }
      for (FullRate rate : low) {
        out.add(
            this,
            pressure.driver().isDriver() ? Severity.WARN : Severity.NOTE,
            about(facts, weed, rate.use()),
            () -> text(facts, pressure, rate));
      }
    }
  }

  private static About about(PassFacts facts, PassWeed weed, ActiveUse a) {
    return facts
        .about()
        .withWeed(weed.weed())
        .withIngredient(a.ingredient().id())
        .withProduct(a.dose().product().id());
  }

  private static List<Partner> foliar(PassFacts facts, PassWeed weed, WeedPressure pressure) {
    HouseRules house = facts.book().house();
    List<Partner> out = new ArrayList<>();
    for (ActiveUse a : facts.actives()) {
      double pct = Rated.foliarPct(facts, pressure, a.ingredient()).orElse(0);
      boolean counted =
          pct >= 100 * house.effectiveSite()
              || weed.foliar().stream()
                  .anyMatch(s -> s.effective() && s.best().equals(a.ingredient().id()));
      add(out, pressure, a, pct, counted, FullRate.foliar(facts, a, weed, pressure));
    }
    return out;
  }

  private static List<Partner> soil(PassFacts facts, WeedPressure pressure) {
    List<Partner> out = new ArrayList<>();
    for (ActiveUse a : facts.actives()) {
      double pct = Rated.soilPct(facts, pressure, a.ingredient()).orElse(0);
      boolean counted = pct >= 100 * facts.book().house().effectiveSoilSite();
      add(out, pressure, a, pct, counted, FullRate.soil(facts, a));
    }
    return out;
  }

  private static void add(
      List<Partner> to,
      WeedPressure pressure,
      ActiveUse a,
      double pct,
      boolean counted,
      Optional<FullRate> rate) {
    if (rate.isPresent()
        && !Rated.isResisted(pressure, a.ingredient())
        && (counted || pct >= HALF_PCT)) {
      to.add(new Partner(rate.get(), counted));
    }
  }

  private static List<FullRate> low(WeedPressure pressure, List<Partner> partners) {
    if (pressure.driver().isDriver() && !pressure.listed().isEmpty()) {
      return partners.stream().map(Partner::rate).filter(FullRate::isMissed).toList();
    }
    long full =
        partners.stream()
            .filter(p -> p.counted() && !p.rate().isMissed())
            .map(p -> p.rate().use().ingredient().site())
            .distinct()
            .count();
    return full >= 2
        ? List.of()
        : partners.stream()
            .filter(Partner::counted)
            .map(Partner::rate)
            .filter(FullRate::isMissed)
            .toList();
  }

  private static Text text(PassFacts facts, WeedPressure pressure, FullRate rate) {
    Basis basis = rate.use().ingredient().rateBasis();
    String actual = Say.lbBeside(rate.lbPerAcreHeld(), rate.lbPerAcre(), basis);
    String limit = Say.lbBeside(rate.lbPerAcre(), rate.lbPerAcreHeld(), basis);
    return Text.of(
            Say.start(rate.use().ingredient())
                + ": "
                + actual
                + " is below the full rate for "
                + pressure.weed().name()
                + " here, "
                + limit
                + " (the use in "
                + facts.traces().crop().name()
                + " has "
                + Say.lb(rate.range().low().lbPerAcre(), basis)
                + " to "
                + Say.lb(rate.range().high().lbPerAcre(), basis)
                + (rate.isAllowedHere()
                    ? ""
                    : ", on this soil no more than " + Say.lb(rate.mostLbPerAcre(), basis))
                + ").",
            rate.use()
                .use()
                .flatMap(u -> u.rates().findSource())
                .map(Source::text)
                .orElse(Say.COMMON_PRACTICE))
        .compared(actual, limit)
        .cleared(rate.isAllowedHere() ? more(facts, rate) : ELSEWHERE);
  }

  private static String more(PassFacts facts, FullRate rate) {
    return Say.productRate(rate.productRate())
        + " of "
        + rate.use().dose().product().name()
        + price(facts, rate).map(m -> ", $" + m + " more an acre").orElse("")
        + " where the season's limits leave room, or smaller plants";
  }

  private static Optional<Money> price(PassFacts facts, FullRate rate) {
    return facts
        .book()
        .prices()
        .perAcre(
            Doses.ofProduct(
                facts.book().catalog(), rate.use().dose().product(), rate.productRate()))
        .flatMap(
            full -> facts.book().prices().perAcre(rate.use().dose()).map(now -> full.minus(now)));
  }
}
