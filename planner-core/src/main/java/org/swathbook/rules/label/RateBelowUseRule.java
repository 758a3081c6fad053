package org.swathbook.rules.label;

import java.util.List;
import org.swathbook.book.SoilRates;
import org.swathbook.catalog.Use;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
import org.swathbook.rules.Findings;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.rules.UseFacts;
import org.swathbook.rules.UseRule;

/** Less of an active in one spraying than the use allows on this soil. */
public final class RateBelowUseRule implements UseRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("rate-below-use"),
          Severity.WARN,
          "Is less of an active in the tank than the label's least rate?",
          "The rate of an active, every product in the tank added up, is below the lowest that the"
              + " use allows on the soils of the field; on weeds for which the catalog lists a least"
              + " rate of their own, by height, below that: the highest that a weed asks for which"
              + " stands and of which the active does half or more. A note where partners of the same"
              + " site bring the tank to it.",
          List.of("Norsworthy et al. 2012, best management practices: full labeled rates"),
          "clethodim 0.031 lb ai/acre where the use begins at 0.094",
          "clethodim 0.047 lb ai/acre where the catalog lists that rate");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(UseFacts facts, Findings out) {
    if (facts.chosen().isEmpty()) {
      return;
    }
    Use use = facts.chosen().get();
    if (SoilRates.of(use, facts.field()) instanceof SoilRates.Allowed allowed
        && LeastRate.mayBeShort(use, allowed.range(), facts.mixLbPerAcre())) {
      LeastRate least = LeastRate.of(facts, use, allowed.range());
      if (Quantity.exceeds(least.lbPerAcre(), facts.mixLbPerAcre())) {
        double site = facts.siteLbPerAcre();
        out.add(
            this,
            Quantity.exceeds(least.lbPerAcre(), site) ? Severity.WARN : Severity.NOTE,
            facts.about(),
            () -> text(facts, least, site));
      }
    }
  }

  private static Text text(UseFacts facts, LeastRate rate, double site) {
    double least = rate.lbPerAcre();
    boolean together = !Quantity.exceeds(least, site);
    String actual = Say.lbBeside(facts.mixLbPerAcre(), least, facts.ingredient().rateBasis());
    String limit = Say.lbBeside(least, facts.mixLbPerAcre(), facts.ingredient().rateBasis());
    Rate now = facts.dose().rate();
    double missing = least - facts.mixLbPerAcre() + facts.active().lbPerAcre();
    Rate enough =
        Say.practicalAtLeast(
            facts.dose().product(),
            new Rate(
                now.amount() * missing / facts.active().lbPerAcre(),
                now.unit(),
                now.area(),
                now.basis()));
    return Text.of(
            Say.start(facts.ingredient())
                + ": "
                + actual
                + " is below the "
                + limit
                + " at which the use in "
                + facts.cropName()
                + " begins"
                + rate.where()
                + "."
                + (together
                    ? " With its partner of site "
                        + facts.ingredient().site()
                        + " the tank holds "
                        + Say.lb(site, facts.ingredient().rateBasis())
                        + "."
                    : ""),
            rate.source())
        .compared(actual, limit)
        .cleared(
            "at least "
                + Say.productRate(enough)
                + " of "
                + facts.dose().product().name()
                + ", or leave it out");
  }
}
