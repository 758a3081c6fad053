package org.swathbook.rules.mixture;

import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.DropletClass;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TankTerms.DropletRange;
import org.swathbook.rules.About;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.PairRule;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.rules.Where;

/**
 * Two partners of which one wants droplets so coarse that the other may not be sprayed with them.
 */
public final class DropletClassRule implements PairRule, PassRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("droplet-class"),
          Severity.BLOCK,
          "Is there a droplet class that both partners allow?",
          "The droplet classes (ANSI/ASABE S572) that two labels state have none in common, or the class"
              + " that the job chooses is none of a label's. A warning where a contact active (sites 10,"
              + " 14, 22) goes out in very coarse droplets or coarser. Asks, at the loading pad, for the"
              + " class, for labels of which it is not known, and for nozzles on the list of a label that"
              + " keeps one.",
          List.of("ANSI/ASABE S572, the classes; the limits are those of the labels"),
          "dicamba over the top (extremely coarse to ultra coarse) with glufosinate (medium to coarse);"
              + " glufosinate in extremely coarse droplets",
          "2,4-D choline with glyphosate");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(ActiveUse first, ActiveUse second, About about, Findings out) {
    Stated<DropletRange> one = first.terms().tank().droplets();
    Stated<DropletRange> other = second.terms().tank().droplets();
    Optional<DropletRange> a = one.find();
    Optional<DropletRange> b = other.find();
    if (a.isPresent() && b.isPresent() && !a.get().meets(b.get())) {
      out.block(
          this,
          about.withIngredient(first.ingredient().id()),
          () ->
              Text.of(
                      Say.start(first.ingredient())
                          + " asks for "
                          + words(a.get())
                          + " droplets and "
                          + second.ingredient().name()
                          + " for "
                          + words(b.get())
                          + "; no class serves both.",
                      Say.source(one) + "; " + Say.source(other))
                  .compared(words(a.get()), words(b.get()))
                  .cleared("two passes, or a partner that allows the same droplets"));
    }
  }

  @Override
  public void judge(PassFacts facts, Findings out) {
    if (facts.job().isEmpty()) {
      return;
    }
    Optional<DropletClass> chosen = facts.job().get().setup().droplets();
    boolean limited = false;
    for (ActiveUse a : facts.actives()) {
      About about = facts.about().withIngredient(a.ingredient().id());
      Stated<DropletRange> range = a.terms().tank().droplets();
      limited |= range.find().isPresent();
      if (range.isUnknown()) {
        out.ask(
            this,
            about,
            () ->
                new Lookup(
                    "droplet classes that the label of " + a.ingredient().name() + " allows",
                    Where.ingredient(a.ingredient(), "tank.droplets", "nozzles and droplets")));
      }
      if (chosen.isPresent()) {
        judge(facts, a, range, chosen.get(), out);
      }
      nozzles(facts, a, out);
    }
    if (chosen.isEmpty() && limited) {
      out.ask(
          this,
          facts.about(),
          () -> new Lookup("droplet class of the nozzles at their pressure", "the job: droplets"));
    }
  }

  private void judge(
      PassFacts facts, ActiveUse a, Stated<DropletRange> range, DropletClass chosen, Findings out) {
    About about = facts.about().withIngredient(a.ingredient().id());
    if (range.find().filter(r -> !r.allows(chosen)).isPresent()) {
      String allowed = words(range.find().get());
      out.block(
          this,
          about,
          () ->
              Text.of(
                      "The label of "
                          + a.ingredient().name()
                          + " asks for "
                          + allowed
                          + " droplets, and the nozzles make "
                          + chosen
                          + " ones.",
                      Say.source(range))
                  .compared(chosen.spelling(), allowed)
                  .cleared("nozzles or pressure that make " + allowed + " droplets"));
    } else if (isContact(a) && chosen.compareTo(DropletClass.VERY_COARSE) >= 0) {
      out.warn(
          this,
          about,
          () ->
              Text.of(
                      Say.start(a.ingredient())
                          + " must cover leaves, and "
                          + chosen
                          + " droplets leave gaps.",
                      Say.COMMON_PRACTICE)
                  .compared(chosen.spelling(), "finer than very coarse")
                  .cleared(
                      "coarse or finer droplets where every label allows them, else 20 gal/acre or more,"
                          + " or another partner"));
    }
  }

  private void nozzles(PassFacts facts, ActiveUse a, Findings out) {
    boolean confirmed = facts.job().orElseThrow().setup().nozzlesListed().orElse(false);
    Stated<Boolean> listed = a.terms().tank().nozzlesListed();
    if (!confirmed && (listed.isUnknown() || listed.find().orElse(false))) {
      out.ask(
          this,
          facts.about().withIngredient(a.ingredient().id()),
          () ->
              new Lookup(
                  "whether nozzle and pressure stand on the list of the label of "
                      + a.ingredient().name(),
                  "the job: nozzlesListed; the list of the label for this date"));
    }
  }

  private static boolean isContact(ActiveUse a) {
    int site = a.ingredient().site().number();
    return a.ingredient().hasFoliarActivity() && (site == 10 || site == 14 || site == 22);
  }

  private static String words(DropletRange r) {
    return r.finest() == r.coarsest() ? r.finest().spelling() : r.finest() + " to " + r.coarsest();
  }
}
