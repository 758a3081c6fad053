package org.swathbook.rules.label;

import java.util.List;
import org.swathbook.book.Application;
import org.swathbook.book.FederalRecord;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.SequenceFacts;
import org.swathbook.rules.SequenceRule;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;

/** A row of the journal that lacks what the record of a restricted product must hold. */
public final class RecordIncompleteRule implements SequenceRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("record-incomplete"),
          Severity.WARN,
          "Does a spray record lack what the law asks?",
          "A row of this season for a restricted-use product lacks the EPA registration number, the"
              + " acres, the crop, the applicator's name or the certificate number: a note, a warning"
              + " once it is older than 14 days.",
          List.of("7 CFR 110.3, records of restricted-use pesticides (from memory)"),
          "a row of atrazine without the certificate number, three weeks old",
          "a row of atrazine with all of it");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(SequenceFacts facts, Findings out) {
    for (Application row : facts.book().journal().of(facts.field().id())) {
      if (row.season() != facts.book().season()
          || row.date().isAfter(facts.date())
          || FederalRecord.restricted(row).isEmpty()) {
        continue;
      }
      List<String> missing = FederalRecord.missing(row);
      if (!missing.isEmpty()) {
        boolean late = row.date().plusDays(FederalRecord.DAYS).isBefore(facts.date());
        out.add(
            this,
            late ? Severity.WARN : Severity.NOTE,
            About.PROGRAM.withProduct(row.dose().product().id()),
            () ->
                Text.of(
                        "The record of "
                            + row.dose().product().name()
                            + " on "
                            + Say.date(row.date())
                            + " lacks "
                            + Say.list(missing)
                            + ".",
                        "7 CFR 110.3 (from memory); states may ask for more")
                    .compared("lacking", "within " + FederalRecord.DAYS + " days")
                    .cleared("fill it into applications.csv"));
      }
    }
  }
}
