package org.swathbook.rules.label;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.swathbook.catalog.Ingredient;
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
              + " than the house catalogAge before: a warning.",
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
}
