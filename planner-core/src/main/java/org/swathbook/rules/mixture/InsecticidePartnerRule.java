package org.swathbook.rules.mixture;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import org.swathbook.rules.SeasonInsecticides;
import org.swathbook.rules.SeasonInsecticides.Named;
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
          "A class of insecticide that the job names, in the tank or used this season, or that the"
              + " journal records this season on this field, is refused by a partner's label; a warning"
              + " where the label only says that it may injure. One that the journal has over the crop is of"
              + " no matter once the days are over that the label waits after one on leaves; where it gives"
              + " none, and after one in the soil, it holds all season. Names of organophosphates stand for"
              + " their class. Where the catalog does not say, an ask. A note where a partner has such a"
              + " limit and neither job nor journal says anything of insecticides. Silent in a plan.",
          List.of(
              "the labels' own limits", "IRAC group 1B, names of organophosphates (from memory)"),
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
    SeasonInsecticides season = SeasonInsecticides.of(facts);
    List<Named> named = season.named();
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
        for (Named n : named) {
          judge(facts, a, n, v, about, out);
        }
      }
    }
    List<String> names = limited.stream().distinct().toList();
    if (named.isEmpty() && !season.saidThatNone() && !names.isEmpty()) {
      out.note(
          this,
          facts.about(),
          () ->
              Text.of(
                      "Neither job nor journal names an insecticide of this season; "
                          + (names.size() == 1 ? "the label of " : "the labels of ")
                          + Say.list(names)
                          + (names.size() == 1 ? " has" : " have")
                          + " limits on organophosphates or others.",
                      "the labels' own limits")
                  .cleared(
                      "others in the job: what went on this season, or none; or the column"
                          + " insecticide of applications.csv"));
    }
  }

  private void judge(
      PassFacts facts,
      ActiveUse a,
      Named named,
      Stated.Value<InsecticideLimit> stated,
      About about,
      Findings out) {
    InsecticideLimit limit = stated.value();
    String class_ = named.insecticideClass();
    boolean refused = limit.refused().contains(class_);
    Optional<LocalDate> over = named.over(limit);
    boolean waited = over.isPresent() && !facts.job().orElseThrow().date().isBefore(over.get());
    if ((refused || limit.caution().contains(class_)) && !waited) {
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
                          + " insecticides"
                          + named.where()
                          + (over.isPresent() ? "; it waits " + wait(limit) + " after them" : "")
                          + ".",
                      stated.source().text())
                  .compared(
                      class_ + named.where(),
                      over.isPresent() ? wait(limit) + " after " + class_ : "no " + class_)
                  .cleared(remedy(over, limit)));
    }
  }

  private static String wait(InsecticideLimit limit) {
    return Say.days(limit.foliarWaitDays().orElseThrow());
  }

  private static String remedy(Optional<LocalDate> over, InsecticideLimit limit) {
    if (over.isPresent()) {
      return "a pass on or after " + Say.date(over.get()) + ", or an active of another site";
    }
    return limit.foliarWaitDays().isPresent()
        ? "an active of another site; where it went onto leaves, a pass "
            + wait(limit)
            + " later, with its day and the stage of the crop in the journal"
        : "an active of another site, or the days that the label asks between";
  }
}
