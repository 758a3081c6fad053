package org.swathbook.rules.mixture;

import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TankTerms.CleanOut;
import org.swathbook.catalog.TankTerms.Rinse;
import org.swathbook.program.EarlierLoad;
import org.swathbook.program.SprayerTank;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.LabelUses;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.rules.Where;

/** What the sprayer held before, and how it was cleaned since. */
public final class TankResidueRule implements PassRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("tank-residue"),
          Severity.BLOCK,
          "Is the tank clean of what injures this crop?",
          "The last load, or one before it, held an active to whose traces this crop is sensitive and"
              + " that it does not tolerate by its traits, and the most thorough clean-out since was"
              + " less than that label's. Asks for the last load, for earlier ones where there was no"
              + " triple rinse since, for the clean-out, and for what labels say of both where that is"
              + " not known. Of no matter in a plan.",
          List.of(
              "Agronomy 2020 10:772, a triple rinse takes out 99.996 % of dicamba, and 0.03 g/ha marks"
                  + " soybean"),
          "dicamba last, one rinse with water, soybean without the trait",
          "atrazine and mesotrione last, a triple rinse, soybean; dicamba last, one rinse, soybean with"
              + " the trait");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(PassFacts facts, Findings out) {
    if (facts.job().isEmpty()) {
      return;
    }
    SprayerTank tank = facts.job().get().tank();
    if (tank.lastLoad().isEmpty()) {
      out.ask(
          this,
          facts.about(),
          () ->
              new Lookup(
                  "what the sprayer held before, and how it was cleaned", "the job: sprayer"));
      return;
    }
    Optional<Rinse> most = Optional.empty();
    boolean last = true;
    for (EarlierLoad load : tank.loads()) {
      most = more(most, load.cleaned());
      for (IngredientId id : load.held()) {
        judge(facts, facts.book().catalog().ingredient(id), last, most, out);
      }
      last = false;
    }
    boolean full = most.filter(r -> r.compareTo(Rinse.WATER_RINSE) > 0).isPresent();
    if (tank.earlier().isEmpty() && !tank.lastLoad().get().isEmpty() && !full) {
      out.ask(
          this,
          facts.about(),
          () ->
              new Lookup(
                  "what the sprayer held before its last load, back to its last triple rinse or tank"
                      + " cleaner",
                  "the job: sprayer, earlier"));
    }
  }

  /** The more thorough of two clean-outs; an unknown one counts as none. */
  private static Optional<Rinse> more(Optional<Rinse> one, Optional<Rinse> other) {
    return one.isEmpty() || other.isPresent() && other.get().compareTo(one.get()) > 0 ? other : one;
  }

  /**
   * @param cleaned the most thorough clean-out since
   */
  private void judge(
      PassFacts facts, Ingredient held, boolean last, Optional<Rinse> cleaned, Findings out) {
    About about = facts.about().withIngredient(held.id());
    Stated<CleanOut> stated = held.terms().tank().cleanOut();
    if (LabelUses.isTolerated(held, facts.field())) {
      return;
    }
    if (stated.isUnknown()) {
      out.ask(
          this,
          about,
          () ->
              new Lookup(
                  "clean-out after " + held.name() + " and the crops that its traces injure",
                  Where.ingredient(held, "tank.cleanOut", "sprayer clean-out")));
      return;
    }
    boolean sensitive =
        stated.find().filter(c -> c.sensitive().contains(facts.field().crop())).isPresent();
    if (!sensitive) {
      return;
    }
    Rinse least = stated.find().orElseThrow().least();
    if (cleaned.isEmpty()) {
      out.ask(
          this,
          about,
          () -> new Lookup("how the sprayer was cleaned after " + held.name(), "the job: cleaned"));
    } else if (cleaned.get().compareTo(least) < 0) {
      Rinse done = cleaned.get();
      out.block(
          this,
          about,
          () ->
              Text.of(
                      (last ? "The last load held " : "A load before the last one held ")
                          + held.name()
                          + ", traces of which injure "
                          + facts.traces().crop().name()
                          + "; "
                          + (last ? "it was cleaned by " : "the most thorough clean-out since was ")
                          + words(done)
                          + ", and its label asks for "
                          + words(least)
                          + ".",
                      Say.source(stated))
                  .compared(words(done), words(least))
                  .cleared(
                      words(least) + " of tank, lines, screens and boom ends before this load"));
    }
  }

  private static String words(Rinse rinse) {
    return switch (rinse) {
      case WATER_RINSE -> "one rinse with water";
      case TRIPLE_RINSE -> "a triple rinse";
      case CLEANER -> "a rinse with a tank cleaner";
    };
  }
}
