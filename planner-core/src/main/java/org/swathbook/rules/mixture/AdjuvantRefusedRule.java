package org.swathbook.rules.mixture;

import java.util.List;
import java.util.Set;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Stated;
import org.swathbook.program.Adjuvant;
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
import org.swathbook.tank.TankNeeds;

/** An adjuvant in the tank that the label of a partner refuses in this crop and position. */
public final class AdjuvantRefusedRule implements PassRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("adjuvant-refused"),
          Severity.BLOCK,
          "Does a partner refuse an adjuvant of the tank?",
          "An adjuvant in the tank is of a kind that the label of a partner refuses in this crop and"
              + " position. With an adjuvant in the tank, an ask where the catalog does not say what"
              + " a label refuses. A carrier other than water is judged with the day.",
          List.of("the labels' own refusals"),
          "ammonium sulfate with dicamba over soybean",
          "ammonium sulfate with 2,4-D choline");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(PassFacts facts, Findings out) {
    List<AdjuvantKind> held =
        facts.pass().mix().adjuvants().stream()
            .flatMap(a -> AdjuvantKind.find(a.kind()).stream())
            .distinct()
            .toList();
    if (held.isEmpty()) {
      return;
    }
    for (ActiveUse a : facts.actives()) {
      About about = facts.about().withIngredient(a.ingredient().id());
      Stated<Set<AdjuvantKind>> refused = a.terms().tank().adjuvantRefused();
      if (refused.isUnknown()) {
        out.ask(this, about, () -> missing(a.ingredient()));
      }
      for (AdjuvantKind kind : held) {
        if (refused.find().filter(r -> r.contains(kind)).isPresent()) {
          out.block(this, about, () -> text(facts, a, kind, refused));
        }
      }
    }
  }

  private static Lookup missing(Ingredient i) {
    return new Lookup(
        "adjuvants that the label of " + i.name() + " refuses",
        Where.ingredient(i, "tank.adjuvantRefused", "adjuvants"));
  }

  private static Text text(
      PassFacts facts, ActiveUse a, AdjuvantKind kind, Stated<Set<AdjuvantKind>> refused) {
    return Text.of(
            "The label of "
                + a.ingredient().name()
                + " refuses "
                + kind
                + " in "
                + facts.traces().crop().name()
                + ".",
            Say.source(refused))
        .compared(kind.spelling(), "no " + kind)
        .cleared(remedy(facts, kind));
  }

  /** What the labels ask for together has nothing in it that one of them refuses. */
  private static String remedy(PassFacts facts, AdjuvantKind kind) {
    List<String> instead =
        TankNeeds.of(facts.actives().stream().map(ActiveUse::partner).toList()).adjuvants().stream()
            .map(Adjuvant::kind)
            .distinct()
            .toList();
    return "leave "
        + kind
        + " out; "
        + (instead.isEmpty()
            ? "no label in the tank asks for an adjuvant that may go in"
            : "what the labels together ask for is " + Say.list(instead));
  }
}
