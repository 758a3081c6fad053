package org.swathbook.rules.mixture;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Interaction;
import org.swathbook.control.Antagonism;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.Rated;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SiteControl;

/** A partner that takes control from another on a weed that the other is there for. */
public final class AntagonismRule implements PassRule {
  /**
   * An active that a weed's table gives this much control, percent, is counted on (default, ours).
   */
  private static final double COUNTED_PCT = 50;

  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("antagonism"),
          Severity.WARN,
          "Does one partner weaken another on a weed that matters?",
          "A pair of the catalog is in the tank, the partner that loses is counted on for a weed that"
              + " stands (rated at half or more, not resisted), and the rate that mends it is not"
              + " reached. A note where the site still controls enough, where the loss has no number"
              + " and where another site does the work. Of several pairs on one partner the worst.",
          List.of(
              "Harre, Young & Young 2020, Weed Technology, clethodim with glyphosate and an auxin",
              "Barnes & Oliver 2004, Weed Technology 18, quizalofop with cloransulam"),
          "quizalofop 0.034 lb ai/acre with cloransulam on giant foxtail of 5 in",
          "clethodim at 0.125 lb ai/acre with glyphosate and dicamba, above the rate that mends it");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(PassFacts facts, Findings out) {
    for (PassWeed weed : facts.pass().weeds()) {
      if (weed.stands()) {
        WeedPressure pressure = facts.pressure(weed.weed());
        for (Antagonism worst : worst(facts, pressure)) {
          if (isCountedOn(facts, pressure, worst.affected())) {
            out.add(
                this,
                severity(weed, worst),
                facts.about().withIngredient(worst.affected().id()).withWeed(weed.weed()),
                () -> text(pressure, weed, worst));
          }
        }
      }
    }
  }

  /** One for each active that loses; pairs with a number before those without. */
  private static Iterable<Antagonism> worst(PassFacts facts, WeedPressure pressure) {
    Map<IngredientId, Antagonism> out = new LinkedHashMap<>();
    for (Antagonism a :
        Antagonism.of(facts.pass().mix(), pressure.weed(), facts.book().catalog().interactions())) {
      out.merge(
          a.affected().id(),
          a,
          (x, y) -> Comparator.comparingDouble(AntagonismRule::left).compare(x, y) <= 0 ? x : y);
    }
    return out.values();
  }

  private static double left(Antagonism a) {
    return a.how().factor();
  }

  private static boolean isCountedOn(PassFacts facts, WeedPressure weed, Ingredient affected) {
    return !Rated.isResisted(weed, affected)
        && Rated.foliarPct(facts, weed, affected).orElse(0) >= COUNTED_PCT;
  }

  private static Severity severity(PassWeed weed, Antagonism a) {
    boolean otherSite =
        weed.foliar().stream()
            .anyMatch(s -> s.effective() && !s.site().equals(a.affected().site()));
    return a.how().isCounted() && !otherSite && !isEffective(weed, a.affected())
        ? Severity.WARN
        : Severity.NOTE;
  }

  private static boolean isEffective(PassWeed weed, Ingredient affected) {
    return weed.foliar().stream().anyMatch(s -> s.effective() && s.site().equals(affected.site()));
  }

  private static Text text(WeedPressure pressure, PassWeed weed, Antagonism a) {
    Interaction how = a.how();
    String lost =
        how.size()
            .map(
                s ->
                    s.low() == s.high()
                        ? Say.share(s.low())
                        : Say.share(s.low()) + " to " + Say.share(s.high()))
            .map(s -> s + " of its control")
            .orElse("control, by how much the source does not say,");
    double pct =
        weed.foliar().stream()
            .filter(s -> s.site().equals(a.affected().site()))
            .mapToDouble(SiteControl::controlPct)
            .findFirst()
            .orElse(0);
    String unless =
        how.unless()
            .map(u -> "; not at " + Say.rate(u.atLeast()) + " or more of " + u.ingredient())
            .orElse("");
    return Text.of(
            Say.start(a.affected())
                + " loses "
                + lost
                + " on "
                + pressure.weed().name()
                + " to a partner in this tank"
                + unless
                + ". Expected by its site here: "
                + Math.round(pct)
                + " %.",
            how.source().text())
        .compared(Math.round(pct) + " %", "the effective site of the house rules")
        .cleared(how.remedy().isEmpty() ? "spray the two apart" : how.remedy());
  }
}
