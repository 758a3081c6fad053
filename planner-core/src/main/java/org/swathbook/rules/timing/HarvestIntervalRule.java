package org.swathbook.rules.timing;

import java.util.List;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.Use;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.UseFacts;
import org.swathbook.rules.UseRule;
import org.swathbook.rules.Where;

/** Days from a spraying to the harvest of grain. */
public final class HarvestIntervalRule implements UseRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("harvest-interval"),
          Severity.BLOCK,
          "Are there enough days between the spraying and the harvest of grain?",
          "Days to the planned harvest of grain are fewer than the interval, or the label refuses that"
              + " use of the crop. Warns when weather delays the pass too far in more than one year of five."
              + " Without a harvest date a note gives the earliest one.",
          List.of(Say.COMMON_PRACTICE),
          "clethodim on 10 Aug in soybean cut on 28 Sep, 49 days where 60 are needed",
          "S-metolachlor 80 days before harvest, where 75 are needed");

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
    if (facts.field().uses().isEmpty() && !use.harvest().isEmpty()) {
      out.ask(
          this,
          facts.about(),
          () ->
              new Lookup(
                  "what is taken off the field (grain, silage, grazing)", Where.field("use")));
    }
    if (facts.field().uses().contains(Commodity.GRAIN)) {
      new CommodityIntervals(this, facts, use, out).judge(List.of(Commodity.GRAIN));
    }
  }
}
