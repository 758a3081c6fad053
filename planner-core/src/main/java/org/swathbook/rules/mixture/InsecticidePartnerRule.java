package org.swathbook.rules.mixture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TankTerms.InsecticideLimit;
import org.swathbook.rules.About;
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

/** An insecticide of the season beside a partner whose label refuses it. */
public final class InsecticidePartnerRule implements PassRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("insecticide-partner"),
          Severity.BLOCK,
          "Does an insecticide of the season refuse a partner?",
          "A class of insecticide that the job names, in the tank or used this season, is refused by a"
              + " partner's label; a warning where the label only says that it may injure. Where the"
              + " catalog does not say, an ask. A note where a partner has such a limit and the job"
              + " names none. Silent in a plan.",
          List.of("the labels' own limits"),
          "nicosulfuron after an organophosphate at planting",
          "mesotrione with a pyrethroid");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(PassFacts facts, Findings out) {
    if (facts.job().isEmpty()) {
      return;
    }
    List<String> named =
        facts.job().get().others().stream().map(o -> o.toLowerCase(Locale.ROOT).strip()).toList();
    List<String> limited = new ArrayList<>();
    for (ActiveUse a : facts.actives()) {
      Stated<InsecticideLimit> limit = a.terms().tank().insecticides();
      About about = facts.about().withIngredient(a.ingredient().id());
      if (limit.isUnknown() && !named.isEmpty()) {
        out.ask(
            this,
            about,
            () ->
                new Lookup(
                    "insecticides that the label of " + a.ingredient().name() + " refuses",
                    Where.ingredient(a.ingredient(), "tank.insecticides", "insecticides")));
      }
      if (limit instanceof Stated.Value<InsecticideLimit> v) {
        limited.add(a.ingredient().name());
        for (String class_ : named) {
          judge(a, class_, v.value(), v.source(), about, out);
        }
      }
    }
    if (named.isEmpty() && !limited.isEmpty()) {
      out.note(
          this,
          facts.about(),
          () ->
              Text.of(
                  "The job names no insecticide of this season; the labels of "
                      + Say.list(limited.stream().distinct().toList())
                      + " have limits on organophosphates or others.",
                  "the labels' own limits"));
    }
  }

  private void judge(
      ActiveUse a,
      String class_,
      InsecticideLimit limit,
      Source source,
      About about,
      Findings out) {
    boolean refused = limit.refused().contains(class_);
    if (refused || limit.caution().contains(class_)) {
      out.add(
          this,
          refused ? Severity.BLOCK : Severity.WARN,
          about,
          () ->
              Text.of(
                      "The label of "
                          + a.ingredient().name()
                          + (refused ? " forbids " : " warns of injury after ")
                          + class_
                          + " insecticides.",
                      source.text())
                  .compared(class_, "no " + class_)
                  .cleared("an active of another site, or the days that the label asks between"));
    }
  }
}
