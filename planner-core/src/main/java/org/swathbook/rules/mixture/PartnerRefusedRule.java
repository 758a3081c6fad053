package org.swathbook.rules.mixture;

import java.util.List;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TankTerms.PartnerList;
import org.swathbook.rules.About;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.PairRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.rules.Where;

/** A partner that a label refuses, or does not list where it allows only listed ones. */
public final class PartnerRefusedRule implements PairRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("partner-refused"),
          Severity.BLOCK,
          "Does a label refuse a partner, or not list it?",
          "One partner is on the refuse list of the other, or the other allows only listed partners"
              + " and this one is not listed. A list that the catalog does not hold is an ask.",
          List.of("the labels' own lists"),
          "quizalofop with 2,4-D choline in tolerant sorghum",
          "glyphosate with glufosinate");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(ActiveUse first, ActiveUse second, About about, Findings out) {
    if (!first.ingredient().id().equals(second.ingredient().id())) {
      judgeOne(first, second, about, out);
      judgeOne(second, first, about, out);
    }
  }

  private void judgeOne(ActiveUse keeper, ActiveUse partner, About about, Findings out) {
    Ingredient i = keeper.ingredient();
    Stated<PartnerList> list = keeper.terms().tank().partners();
    if (list.isUnknown()) {
      out.ask(
          this,
          about.withIngredient(i.id()),
          () ->
              new Lookup(
                  "partner list of " + i.name() + " for the date",
                  Where.ingredient(i, "tank.partners", "tank mixing")));
      return;
    }
    list.find()
        .filter(l -> !l.allows(partner.ingredient().id()))
        .ifPresent(
            l ->
                out.block(
                    this,
                    about.withIngredient(i.id()),
                    () ->
                        Text.of(
                                "The label of "
                                    + i.name()
                                    + (l.only() ? " does not list " : " refuses ")
                                    + partner.ingredient().name()
                                    + " in one tank.",
                                list.findSource().map(Source::text).orElse(Say.COMMON_PRACTICE))
                            .compared(
                                partner.ingredient().name(),
                                l.only() ? "listed partners only" : "refused partners")
                            .cleared("two passes some days apart, or another partner")));
  }
}
