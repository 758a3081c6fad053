package org.swathbook.rules.label;

import java.util.List;
import java.util.Optional;
import org.swathbook.book.Tillage;
import org.swathbook.rules.Findings;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.rules.UseFacts;
import org.swathbook.rules.UseRule;

/** Actives that are lost to air and light unless they are worked into the soil. */
public final class IncorporationNeededRule implements UseRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("incorporation-needed"),
          Severity.BLOCK,
          "Will what must be worked into the soil be worked in?",
          "The active must be incorporated mechanically and the field is not tilled at planting, or"
              + " the pass comes after that tillage. In a tilled field a note says by when.",
          List.of("PNW Weed Management Handbook, trifluralin"),
          "trifluralin in no-till; trifluralin a day after the tillage at planting",
          "trifluralin, disked in on the same day");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(UseFacts facts, Findings out) {
    Optional<String> how = facts.ingredient().incorporation();
    if (facts.chosen().isEmpty() || how.isEmpty()) {
      return;
    }
    boolean tilled = facts.field().tillage() == Tillage.TILLED;
    if (tilled && !facts.date().isAfter(facts.field().plantDate())) {
      out.note(
          this,
          facts.about(),
          () ->
              Text.of(
                  Say.start(facts.ingredient()) + " is to be worked in " + how.get() + ".",
                  facts.ingredient().name() + " in the catalog"));
      return;
    }
    out.block(
        this,
        facts.about(),
        () ->
            Text.of(
                    Say.start(facts.ingredient())
                        + " must be worked in "
                        + how.get()
                        + (tilled
                            ? ", and this pass comes after the tillage at planting."
                            : ", and this field is not tilled."),
                    facts.ingredient().name() + " in the catalog")
                .compared(tilled ? "sprayed after the tillage" : "no tillage", how.get())
                .cleared(
                    tilled
                        ? "a pass before " + Say.date(facts.field().plantDate())
                        : "tillage, or a soil active that rain carries down"));
  }
}
