package org.swathbook.rules.label;

import java.util.List;
import java.util.Optional;
import org.swathbook.book.Tillage;
import org.swathbook.catalog.Use;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.rules.UseFacts;
import org.swathbook.rules.UseRule;
import org.swathbook.rules.Where;

/** Actives that are lost to air and light unless they are worked into the soil. */
public final class IncorporationNeededRule implements UseRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("incorporation-needed"),
          Severity.BLOCK,
          "Will what must be worked into the soil be worked in, and what may not be left on top?",
          "The active must be incorporated mechanically and the field is not tilled at planting, or"
              + " the pass comes after that tillage, or the job says that it stays on top. In a tilled"
              + " field a note says by when. The other way round, the use forbids to work it in, and"
              + " the job does so, or the tillage at planting comes after the pass. A job that works"
              + " in a soil active of which the use does not say whether it may be is asked for it.",
          List.of(
              "PNW Weed Management Handbook, trifluralin",
              "PNW Weed Management Handbook, sweet corn: pendimethalin never worked in"),
          "trifluralin in no-till; trifluralin a day after the tillage at planting; pendimethalin"
              + " in corn, worked in by the tillage at planting",
          "trifluralin, disked in on the same day; pendimethalin in corn on the day of planting, left"
              + " on top; pendimethalin before planting where nobody tills");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(UseFacts facts, Findings out) {
    if (facts.chosen().isEmpty()) {
      return;
    }
    Use use = facts.chosen().get();
    Optional<Boolean> said = facts.job().flatMap(j -> j.setup().incorporated());
    Optional<String> how = facts.ingredient().incorporation();
    if (use.incorporationRefused().find().orElse(false)) {
      forbidden(facts, use, said, out);
    } else if (how.isPresent()) {
      needed(facts, how.get(), said, out);
    } else if (said.orElse(false)
        && facts.ingredient().hasSoilActivity()
        && use.incorporationRefused().isUnknown()) {
      out.ask(
          this,
          facts.about(),
          () ->
              new Lookup(
                  "whether "
                      + facts.ingredient().name()
                      + " may be worked in, in "
                      + facts.cropName(),
                  Where.use(facts.ingredient(), use, "incorporate", "directions for the crop")));
    }
  }

  private void needed(UseFacts facts, String how, Optional<Boolean> said, Findings out) {
    boolean tilled = facts.field().tillage() == Tillage.TILLED;
    boolean inTime = tilled && !facts.date().isAfter(facts.field().plantDate());
    if (said.orElse(inTime)) {
      out.note(
          this,
          facts.about(),
          () ->
              Text.of(
                  Say.start(facts.ingredient()) + " is to be worked in " + how + ".",
                  facts.ingredient().name() + " in the catalog"));
      return;
    }
    String why =
        said.isPresent()
            ? ", and this job leaves it on top."
            : tilled
                ? ", and this pass comes after the tillage at planting."
                : ", and this field is not tilled.";
    out.block(
        this,
        facts.about(),
        () ->
            Text.of(
                    Say.start(facts.ingredient()) + " must be worked in " + how + why,
                    facts.ingredient().name() + " in the catalog")
                .compared(
                    said.isPresent()
                        ? "not worked in"
                        : tilled ? "sprayed after the tillage" : "no tillage",
                    how)
                .cleared(
                    tilled && said.isEmpty()
                        ? "a pass before " + Say.date(facts.field().plantDate())
                        : "tillage, or a soil active that rain carries down"));
  }

  /** The tillage at planting works in what lies on the ground before it. */
  private void forbidden(UseFacts facts, Use use, Optional<Boolean> said, Findings out) {
    boolean before =
        facts.field().tillage() == Tillage.TILLED
            && facts.date().isBefore(facts.field().plantDate());
    if (!said.orElse(false) && !before) {
      return;
    }
    boolean bySteel = said.orElse(false);
    out.block(
        this,
        facts.about(),
        () ->
            Text.of(
                    Say.start(facts.ingredient())
                        + " may not be worked in, in "
                        + facts.cropName()
                        + (bySteel
                            ? ", and this job works it in."
                            : ", and the tillage at planting on "
                                + Say.date(facts.field().plantDate())
                                + " would."),
                    Say.source(use.incorporationRefused()))
                .compared(bySteel ? "worked in" : "sprayed before the tillage", "left on top")
                .cleared(
                    bySteel
                        ? "leave it on top, for rain to carry it down"
                        : "a pass after the tillage at planting"));
  }
}
