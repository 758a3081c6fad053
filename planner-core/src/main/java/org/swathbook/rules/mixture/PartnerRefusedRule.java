package org.swathbook.rules.mixture;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.swathbook.catalog.Ingredient;
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
              + " and this one is not listed. What stands together in one product is no pair. A list that"
              + " the catalog does not hold is an ask, once a tank.",
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

  /**
   * One ask for each list that the catalog does not hold, with all that it is to be held against.
   */
  @Override
  public void ask(List<ActiveUse> tank, About about, Findings out) {
    // An active that two products bring has the partners of both, whichever is named first.
    Map<Ingredient, SortedSet<String>> lists = new LinkedHashMap<>();
    for (ActiveUse keeper : tank) {
      Ingredient i = keeper.ingredient();
      if (keeper.terms().tank().partners().isUnknown()) {
        SortedSet<String> partners =
            lists.computeIfAbsent(i, k -> new TreeSet<>(String.CASE_INSENSITIVE_ORDER));
        tank.stream()
            .filter(a -> !a.isOfOneProductWith(keeper) && !a.ingredient().id().equals(i.id()))
            .forEach(a -> partners.add(a.ingredient().name()));
      }
    }
    lists.forEach(
        (i, partners) -> {
          if (!partners.isEmpty()) {
            out.ask(
                this,
                about.withIngredient(i.id()),
                () ->
                    new Lookup(
                        "whether the partner list of "
                            + i.name()
                            + " for the date allows "
                            + Say.list(List.copyOf(partners)),
                        Where.ingredient(i, "tank.partners", "tank mixing")));
          }
        });
  }

  private void judgeOne(ActiveUse keeper, ActiveUse partner, About about, Findings out) {
    Ingredient i = keeper.ingredient();
    Stated<PartnerList> list = keeper.terms().tank().partners();
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
                                Say.source(list))
                            .compared(
                                partner.ingredient().name(),
                                l.only() ? "listed partners only" : "refused partners")
                            .cleared("two passes some days apart, or another partner")));
  }
}
