package org.swathbook.rules.label;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Stated;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.rules.Where;

/** Products that only certified applicators may buy and apply. */
public final class RestrictedUseRule implements PassRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("restricted-use"),
          Severity.NOTE,
          "Who may apply what is in this tank?",
          "An active of the pass is marked as restricted use: the note says that a certified"
              + " applicator must apply it or supervise, and that a record is to be kept.",
          List.of("US federal rules on restricted-use pesticides; from memory"),
          "a pass with atrazine",
          "a pass with glyphosate");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(PassFacts facts, Findings out) {
    Set<String> told = new TreeSet<>();
    for (ActiveUse a : facts.actives()) {
      Ingredient i = a.ingredient();
      Stated<Boolean> restricted =
          a.use().map(u -> u.terms().restrictedUse()).orElse(i.terms().restrictedUse());
      if (!told.add(i.id().value())) {
        continue;
      }
      if (restricted.isUnknown()) {
        out.ask(
            this,
            facts.about().withIngredient(i.id()),
            () ->
                new Lookup(
                    "whether " + i.name() + " is a restricted-use product",
                    Where.ingredient(i, "restrictedUse", "first page")));
      } else if (restricted.find().orElse(false)) {
        out.note(
            this,
            facts.about().withIngredient(i.id()).withProduct(a.dose().product().id()),
            () ->
                Text.of(
                    Say.start(i)
                        + " is a restricted-use product: a certified applicator applies it or"
                        + " supervises, and keeps a record with the certificate's number.",
                    restricted.findSource().map(Object::toString).orElse(Say.COMMON_PRACTICE)));
      }
    }
  }
}
