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
              + " use allows on the soils of the field.",
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
    if (SoilRates.of(use, facts.field()) instanceof SoilRates.Allowed allowed) {
      double least = allowed.range().low().lbPerAcre();
      if (Quantity.exceeds(least, facts.mixLbPerAcre())) {
        out.warn(this, facts.about(), () -> text(facts, use, least));
      }
    }
  }

  private static Text text(UseFacts facts, Use use, double least) {
    String actual = Say.lb(facts.mixLbPerAcre(), facts.ingredient().rateBasis());
    String limit = Say.lb(least, facts.ingredient().rateBasis());
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
                + " begins on this soil.",
            use.rates().findSource().map(Object::toString).orElse(Say.COMMON_PRACTICE))
        .compared(actual, limit)
        .cleared(
            "at least "
                + Say.productRate(enough)
                + " of "
                + facts.dose().product().name()
                + ", or leave it out");
  }
}
