package org.swathbook.rules.label;

import java.util.List;
import java.util.stream.Collectors;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Method;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Use;
import org.swathbook.rules.Findings;
import org.swathbook.rules.LabelUses;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.rules.UseFacts;
import org.swathbook.rules.UseRule;

/** The label must name the crop, at this time of its life and in this formulation. */
public final class CropNotListedRule implements UseRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("crop-not-listed"),
          Severity.BLOCK,
          "Does the label name this crop, at this time and in this formulation?",
          "No use of the active, in the formulation of the product, for the crop of the field in"
              + " this part of its life: before it is up, over it, after its harvest. A crop that"
              + " the catalog does not list is never passed over as unknown.",
          List.of(
              "US federal law on pesticides (FIFRA): no use inconsistent with the labeling; from"
                  + " memory"),
          "tembotrione over grain sorghum; acetochlor as an emulsifiable concentrate in soybean,"
              + " where only capsules are listed",
          "acetochlor in capsules in soybean");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(UseFacts facts, Findings out) {
    if (facts.chosen().isPresent()) {
      return;
    }
    out.block(this, facts.about(), () -> text(facts));
  }

  private static Text text(UseFacts facts) {
    Ingredient active = facts.ingredient();
    String crop = facts.cropName();
    List<Use> ofCrop = active.uses().stream().filter(u -> u.isFor(facts.field().crop())).toList();
    List<Use> here =
        ofCrop.stream().filter(u -> u.isIn(LabelUses.phase(facts.positions()))).toList();
    String source = "the catalog's list of uses of " + active.name();
    String start = Say.start(active) + ": ";

    if (here.stream().anyMatch(Use::refused)) {
      String note = here.stream().filter(Use::refused).map(Use::note).findFirst().orElse("");
      return Text.of(
              start
                  + "the label refuses "
                  + crop
                  + " "
                  + facts.when()
                  + (note.isBlank() ? "." : " (" + note + ")."),
              source)
          .compared(crop + " " + facts.when(), "refused")
          .cleared("an active that is listed for " + crop + " " + facts.when());
    }
    List<Use> broadcast = here.stream().filter(u -> u.isBy(Method.BROADCAST)).toList();
    if (!here.isEmpty() && broadcast.isEmpty()) {
      String ways =
          Say.list(
              here.stream()
                  .flatMap(u -> u.methods().stream())
                  .distinct()
                  .sorted()
                  .map(Method::spelling)
                  .toList());
      return Text.of(
              start
                  + "in "
                  + crop
                  + " "
                  + facts.when()
                  + " it is listed for "
                  + ways
                  + " sprays only, and this pass is broadcast.",
              source)
          .compared("broadcast", ways)
          .cleared("a " + ways + " spray, or another active");
    }
    if (!here.isEmpty()) {
      List<String> listed =
          broadcast.stream().flatMap(u -> u.formulations().stream()).distinct().sorted().toList();
      String forms = Say.list(listed);
      return Text.of(
              start
                  + "in "
                  + crop
                  + " "
                  + facts.when()
                  + (listed.size() == 1 ? " only the formulation " : " only the formulations ")
                  + forms
                  + (listed.size() == 1 ? " is" : " are")
                  + " listed, and this product is "
                  + facts.dose().product().formulation()
                  + ".",
              source)
          .compared(facts.dose().product().formulation(), forms)
          .cleared("a product of formulation " + String.join(" or ", listed));
    }
    if (ofCrop.stream().anyMatch(u -> !u.refused())) {
      String times =
          ofCrop.stream()
              .filter(u -> !u.refused())
              .flatMap(u -> u.positions().stream())
              .sorted()
              .distinct()
              .map(Position::spelling)
              .collect(Collectors.joining(", "));
      return Text.of(
              start
                  + "no use is listed in "
                  + crop
                  + " "
                  + facts.when()
                  + "; listed there: "
                  + times
                  + ".",
              source)
          .compared(facts.when(), times)
          .cleared("the pass at a listed time, or another active");
    }
    return Text.of(
            start
                + "no use is listed in "
                + crop
                + (active.usesComplete() ? "." : ", and the list of its crops may not be whole."),
            source)
        .compared(crop, "listed crops alone")
        .cleared("an active that is listed for " + crop + " " + facts.when());
  }
}
