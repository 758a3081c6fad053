package org.swathbook.rules.label;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Registration;
import org.swathbook.catalog.Stated;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;

/** An entry of the catalog that nobody has held against a label for long. */
public final class CatalogStaleRule implements PassRule {
  private static final int FRESH_MONTHS = 12;

  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("catalog-stale"),
          Severity.WARN,
          "Was the catalog entry held against a label of late?",
          "On the day of the pass the entry was last reviewed more than 12 months before: a note. More"
              + " than the house catalogAge before: a warning. A warning as well where the use has years"
              + " of its label and the last of them is before the season; that it has run out is said by"
              + " registration-status.",
          List.of("house rule catalogAge"),
          "an entry reviewed in January 2025 for a pass in June 2027",
          "an entry reviewed in November 2026 for a pass in June 2027");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(PassFacts facts, Findings out) {
    LocalDate day = facts.pass().timing().medianDate();
    int most = facts.book().house().catalogAgeMonths();
    Set<String> told = new TreeSet<>();
    for (ActiveUse a : facts.actives()) {
      Ingredient i = a.ingredient();
      labelYear(facts, a, out);
      boolean old = i.reviewed().plusMonths(most).isBefore(day);
      if (told.add(i.id().value())
          && (old || i.reviewed().plusMonths(FRESH_MONTHS).isBefore(day))) {
        out.add(
            this,
            old ? Severity.WARN : Severity.NOTE,
            facts.about().withIngredient(i.id()),
            () ->
                Text.of(
                        "The entry of "
                            + i.name()
                            + " was last held against a label on "
                            + Say.date(i.reviewed())
                            + ".",
                        "house rule catalogAge")
                    .compared(Say.date(i.reviewed()), (old ? most : FRESH_MONTHS) + " months")
                    .cleared(
                        "read the current label, mend catalog/ingredients/"
                            + i.id()
                            + ".yaml and its date in reviewed"));
      }
    }
  }

  /** A label that is good for years, and none of them the season's; what ran out is blocked. */
  private void labelYear(PassFacts facts, ActiveUse a, Findings out) {
    int season = facts.book().season();
    int year = facts.pass().timing().medianDate().getYear();
    if (a.use().isPresent()
        && a.use().get().registration().years()
            instanceof Stated.Value<Registration.LabelYears> years
        && years.value().last() < season
        && year <= years.value().last()) {
      int last = years.value().last();
      out.warn(
          this,
          facts.about().withIngredient(a.ingredient().id()),
          () ->
              Text.of(
                      "The label of "
                          + a.ingredient().name()
                          + " that the catalog has for this use is one of "
                          + last
                          + " at the latest, and the season is "
                          + season
                          + ".",
                      years.source().text())
                  .compared("label of " + last, "label of " + season)
                  .cleared("read the label of " + season + " and mend labelYears"));
    }
  }
}
