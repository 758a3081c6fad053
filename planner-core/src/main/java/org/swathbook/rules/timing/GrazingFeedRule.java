package org.swathbook.rules.timing;

import java.util.List;
import org.swathbook.catalog.Commodity;
import org.swathbook.rules.Findings;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.UseFacts;
import org.swathbook.rules.UseRule;

/** Days from a spraying to feed: silage, forage, hay, grazing. */
public final class GrazingFeedRule implements UseRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("grazing-feed"),
          Severity.BLOCK,
          "May the field be grazed or fed when it is planned?",
          "The field is used for silage, forage, hay or grazing, and days to its harvest are fewer than"
              + " that interval, or the label refuses that feed. An ask where the catalog does not"
              + " say. Warns when weather delays the pass too far in more than one year of five.",
          List.of(Say.COMMON_PRACTICE),
          "atrazine over corn that is cut for silage inside 60 days",
          "the same over corn of which grain alone is taken");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(UseFacts facts, Findings out) {
    if (facts.chosen().isPresent()) {
      new CommodityIntervals(this, facts, facts.chosen().get(), out)
          .judge(facts.field().uses().stream().filter(c -> c != Commodity.GRAIN).sorted().toList());
    }
  }
}
