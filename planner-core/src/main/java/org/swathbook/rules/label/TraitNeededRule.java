package org.swathbook.rules.label;

import java.util.List;
import java.util.Set;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Trait;
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

/** A crop without the trait, safener or tolerance that a use needs would be injured or killed. */
public final class TraitNeededRule implements UseRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("trait-needed"),
          Severity.BLOCK,
          "Does the crop have the trait, seed safener or tolerance that this use needs?",
          "The use needs a trait that the traits of the field do not hold. Traits left blank are"
              + " unknown: over the crop that blocks until the seed is confirmed, before emergence"
              + " it is asked; 'none' is a statement.",
          List.of(Say.COMMON_PRACTICE),
          "glyphosate over soybean at V3 with traits 'none'; S-metolachlor before emergence on"
              + " sorghum without safened seed; dicamba over soybean with the 2,4-D trait",
          "glyphosate as a burndown before emergence on soybean without a trait");

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
    if (use.traits() instanceof Stated.Value<Set<Trait>> needed) {
      judge(facts, needed.value(), needed.source(), out);
    } else if (use.traits().isUnknown()) {
      out.ask(
          this,
          facts.about(),
          () ->
              new Lookup(
                  "whether " + facts.ingredient().name() + " needs a trait of " + facts.cropName(),
                  Where.use(facts.ingredient(), use, "trait", "directions for the crop")));
    }
  }

  private void judge(UseFacts facts, Set<Trait> needed, Source source, Findings out) {
    if (facts.field().traits().isEmpty()) {
      if (facts.isInCrop()) {
        out.block(
            this,
            facts.about(),
            () ->
                Text.of(
                        Say.start(facts.ingredient())
                            + " needs "
                            + facts.cropName()
                            + " with "
                            + needed(needed)
                            + ", and the field does not say what was planted.",
                        source.text())
                    .compared("unknown", names(needed))
                    .cleared("confirm the seed tag and fill in the traits of the field"));
      } else {
        out.ask(
            this,
            facts.about(),
            () ->
                new Lookup(
                    "whether the seed has "
                        + needed(needed)
                        + ", which "
                        + facts.ingredient().name()
                        + " needs",
                    "seed tag; then " + Where.field("traits")));
      }
      return;
    }
    Set<Trait> has = facts.field().traits().get();
    if (!has.containsAll(needed)) {
      out.block(
          this,
          facts.about(),
          () ->
              Text.of(
                      Say.start(facts.ingredient())
                          + " needs "
                          + facts.cropName()
                          + " with "
                          + needed(needed)
                          + "; this field has "
                          + (has.isEmpty()
                              ? "no trait"
                              : (has.size() == 1 ? "the trait " : "the traits ") + names(has))
                          + ".",
                      source.text())
                  .compared(has.isEmpty() ? "none" : names(has), names(needed))
                  .cleared("an active that needs no trait here, or seed that has it"));
    }
  }

  private static String names(Set<Trait> traits) {
    return Say.list(traits.stream().sorted().map(TraitNeededRule::name).toList());
  }

  /** {@code the glyphosate trait}; a safener on the seed is no trait. */
  private static String needed(Set<Trait> traits) {
    return Say.list(
        traits.stream()
            .sorted()
            .map(t -> t.value().equals("safened-seed") ? name(t) : "the " + name(t) + " trait")
            .toList());
  }

  /** As people write it. */
  private static String name(Trait trait) {
    return switch (trait.value()) {
      case "2-4-d" -> "2,4-D";
      case "als-tolerant" -> "ALS-tolerant";
      case "accase-tolerant" -> "ACCase-tolerant";
      case "safened-seed" -> "safened seed";
      default -> trait.value();
    };
  }
}
