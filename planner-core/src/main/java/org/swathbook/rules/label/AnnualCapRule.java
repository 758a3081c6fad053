package org.swathbook.rules.label;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.swathbook.catalog.Cap;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.ledger.UsedAndLeft;
import org.swathbook.measure.Rate;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.LabelUses;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.SequenceFacts;
import org.swathbook.rules.SequenceRule;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.rules.Where;

/**
 * Sums against caps. All forms of a parent active share the largest cap of their uses on this crop;
 * a form whose own cap is smaller is counted alone against that too, and so are the sub-caps of
 * single positions.
 */
public final class AnnualCapRule implements SequenceRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("annual-cap"),
          Severity.BLOCK,
          "Does the period bring more of a parent active than its cap?",
          "The sum over all salts, esters and forms, premixes, journal and plan, in the cap's own"
              + " basis and period, is above the cap on this pass's day; from 90 % on a warning at the"
              + " loading pad and a note in a plan. A"
              + " weight that cannot be added because its basis differs is asked, and so are acres that a row of"
              + " the journal leaves out.",
          List.of(Say.COMMON_PRACTICE),
          "atrazine 1.6 before and 1.0 after emergence of corn, 2.6 over 2.5 lb ai/acre;"
              + " S-metolachlor 1.27 + 1.27 in soybean, 2.54 over 2.48",
          "S-metolachlor 0.95 + 1.19 in soybean, 2.14 of 2.48");

  private static final double NEAR = 0.9;

  /** A share of the cap above which what is left is no more than rounding. */
  private static final double ALL = 0.99;

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(SequenceFacts facts, Findings out) {
    Set<String> done = new TreeSet<>();
    for (Dose dose : facts.mix().doses()) {
      for (ActiveDose active : dose.actives()) {
        Ingredient i = active.ingredient();
        About about = facts.about().withIngredient(i.id()).withProduct(dose.product().id());
        askUnknown(facts, dose, i, about, out);
        if (done.add(i.id().value())) {
          for (CapTest t : CapTest.of(facts, i)) {
            judge(facts, dose, active, t, about, out);
          }
        }
      }
    }
  }

  private void askUnknown(SequenceFacts facts, Dose dose, Ingredient i, About about, Findings out) {
    LabelUses.fitting(i, facts.field(), facts.positions(), dose.product().formulation()).stream()
        .filter(u -> u.caps().isUnknown())
        .findFirst()
        .ifPresent(
            u ->
                out.ask(
                    this,
                    about,
                    () ->
                        new Lookup(
                            "most of " + i.name() + " in a season of " + facts.field().crop(),
                            Where.use(i, u, "cap", "maximum use rates"))));
  }

  private void judge(
      SequenceFacts facts, Dose dose, ActiveDose active, CapTest t, About about, Findings out) {
    UsedAndLeft sum = facts.ledger().used(t.counts(), t.cap(), facts.book().season(), facts.date());
    if (sum.exceeded()) {
      out.block(this, about, () -> above(facts, dose, active, t, sum));
    } else if (sum.share() >= NEAR) {
      out.add(
          this,
          facts.atLoading() ? Severity.WARN : Severity.NOTE,
          about,
          () -> near(facts, dose, active, t, sum));
    }
    if (sum.counted().stream().anyMatch(e -> !e.isPlanned() && e.acres().isEmpty())) {
      out.ask(
          this,
          about,
          () ->
              new Lookup(
                  "acres that "
                      + active.ingredient().name()
                      + " went on this season: a row counts as the whole field without them",
                  "spray record; then column acres of applications.csv"));
    }
    if (!sum.isComplete()) {
      out.ask(
          this,
          about,
          () ->
              new Lookup(
                  "weight of "
                      + Say.list(
                          sum.notComparable().stream()
                              .map(e -> e.active().ingredient().name())
                              .distinct()
                              .toList())
                      + " in the basis of the cap ("
                      + Say.rate(t.cap().amount())
                      + ")",
                  "label, acid equivalent statement; then cap in catalog/ingredients/"
                      + active.ingredient().id()
                      + ".yaml"));
    }
  }

  private static Text above(
      SequenceFacts facts, Dose dose, ActiveDose active, CapTest t, UsedAndLeft sum) {
    Rate used = sum.used();
    Rate cap = t.cap().amount();
    String actual = Say.lbBeside(used.lbPerAcre(), cap.lbPerAcre(), used.basis());
    String limit = Say.lbBeside(cap.lbPerAcre(), used.lbPerAcre(), cap.basis());
    return Text.of(
            Say.start(t.what())
                + ": "
                + actual
                + " "
                + period(t.cap())
                + " is above the "
                + limit
                + " allowed in "
                + crop(facts)
                + where(t.cap()),
            t.source().text())
        .compared(actual, limit)
        .cleared(remedy(dose, active, sum));
  }

  private static Text near(
      SequenceFacts facts, Dose dose, ActiveDose active, CapTest t, UsedAndLeft sum) {
    String actual = Say.rate(sum.used());
    String limit = Say.rate(t.cap().amount());
    return Text.of(
            Say.start(t.what())
                + ": "
                + actual
                + " "
                + period(t.cap())
                + (sum.share() < ALL
                    ? " leaves " + Say.rate(sum.left()) + " of the " + limit + " allowed in "
                    : " is all that is allowed in ")
                + crop(facts)
                + where(t.cap()),
            t.source().text())
        .compared(actual, limit)
        .cleared(
            facts.atLoading()
                ? "count it once more against the label; less of "
                    + dose.product().name()
                    + " now leaves some "
                    + active.ingredient().name()
                    + " for later"
                : "");
  }

  /** A cap of some positions says so, for others leave more. */
  private static String where(Cap cap) {
    return cap.counts().isEmpty() ? "." : " (" + positions(cap) + ").";
  }

  private static String remedy(Dose dose, ActiveDose active, UsedAndLeft sum) {
    double before = sum.used().lbPerAcre() - active.lbPerAcre();
    double left = sum.cap().amount().lbPerAcre() - before;
    if (left <= 0) {
      return "another active: nothing is left of this one";
    }
    double kgPerHa = Rate.lbPerAcre(left, active.ingredient().rateBasis()).kgPerHa();
    Optional<Rate> product =
        dose.product()
            .find(active.ingredient().id())
            .map(
                c ->
                    Say.practical(
                        dose.product(),
                        Doses.productRate(
                            dose.product(), c.concentration().productPerHa(kgPerHa))));
    return product.filter(r -> r.amount() > 0).isPresent()
        ? "at most " + Say.productRate(product.get()) + " of " + dose.product().name()
        : "another active: less than one practical step is left";
  }

  private static String period(Cap cap) {
    return switch (cap.per()) {
      case SEASON -> "this season";
      case CALENDAR_YEAR -> "this calendar year";
      case CROP_YEAR -> "this crop year";
      case TWELVE_MONTHS -> "within 12 months";
      case TWO_CALENDAR_YEARS -> "in this calendar year and the last";
    };
  }

  private static String positions(Cap cap) {
    return cap.counts().stream().sorted().map(Position::spelling).collect(Collectors.joining(", "));
  }

  private static String crop(SequenceFacts facts) {
    return facts.book().catalog().crop(facts.field().crop()).name();
  }
}
