package org.swathbook.rules.label;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.book.Application;
import org.swathbook.catalog.Ingredient;
import org.swathbook.program.ActiveDose;
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
  /** Days in which the record is to be made. */
  private static final int DAYS = 14;

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
          || !isRestricted(row)) {
        continue;
      }
      List<String> missing = missing(row);
      if (!missing.isEmpty()) {
        boolean late = row.date().plusDays(DAYS).isBefore(facts.date());
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
                    .compared("lacking", "within " + DAYS + " days")
                    .cleared("fill it into applications.csv"));
      }
    }
  }

  private static boolean isRestricted(Application row) {
    return row.dose().actives().stream()
        .map(ActiveDose::ingredient)
        .map(Ingredient::terms)
        .anyMatch(t -> t.restrictedUse().find().orElse(false));
  }

  private static List<String> missing(Application row) {
    List<String> out = new ArrayList<>();
    need(out, row.record().epaRegNo(), "the EPA registration number");
    if (row.acres().isEmpty()) {
      out.add("the acres");
    }
    need(out, row.crop(), "the crop");
    need(out, row.record().applicator(), "the applicator");
    need(out, row.record().certNo(), "the certificate number");
    return out;
  }

  private static void need(List<String> out, String value, String what) {
    if (value.isBlank()) {
      out.add(what);
    }
  }
}
