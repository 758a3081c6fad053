package org.swathbook.rules.mixture;

import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TankTerms.DropletRange;
import org.swathbook.rules.About;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PairRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;

/**
 * Two partners of which one wants droplets so coarse that the other may not be sprayed with them.
 */
public final class DropletClassRule implements PairRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("droplet-class"),
          Severity.BLOCK,
          "Is there a droplet class that both partners allow?",
          "The droplet classes (ANSI/ASABE S572) that two labels state have none in common. The class"
              + " that is chosen on the day is judged with the day.",
          List.of("ANSI/ASABE S572, the classes; the limits are those of the labels"),
          "dicamba over the top (extremely coarse to ultra coarse) with glufosinate (medium to coarse)",
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
    if (a.isPresent() && b.isPresent() && !meet(a.get(), b.get())) {
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
                      source(one) + "; " + source(other))
                  .compared(words(a.get()), words(b.get()))
                  .cleared("two passes, or a partner that allows the same droplets"));
    }
  }

  private static boolean meet(DropletRange a, DropletRange b) {
    return a.finest().compareTo(b.coarsest()) <= 0 && b.finest().compareTo(a.coarsest()) <= 0;
  }

  private static String words(DropletRange r) {
    return r.finest() == r.coarsest() ? r.finest().spelling() : r.finest() + " to " + r.coarsest();
  }

  private static String source(Stated<DropletRange> s) {
    return s.findSource().map(Source::text).orElse(Say.COMMON_PRACTICE);
  }
}
