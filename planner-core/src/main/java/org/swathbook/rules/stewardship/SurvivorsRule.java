package org.swathbook.rules.stewardship;

import java.util.List;
import org.swathbook.book.DriverKind;
import org.swathbook.measure.Quantity;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.ProgramFacts;
import org.swathbook.rules.ProgramRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.season.outcome.WeedOutcome;

/** Plants of a driver weed that live to set seed. */
public final class SurvivorsRule implements ProgramRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("survivors"),
          Severity.WARN,
          "How many plants of the driver weed live to harvest?",
          "Survivors that came up before needed-until are more on an acre than the house's"
              + " maxSurvivors: a note, and a warning above ten times that. Of a weed of which no"
              + " survivor is accepted, a warning from one plant on an acre, whenever it came up.",
          List.of(Say.COMMON_PRACTICE),
          "95 % control of 80 plants/m², 16,200 on an acre; two plants on an acre of a weed of"
              + " which none may live",
          "99.99 % control of 80 plants/m², 32 on an acre");

  private static final double MANY = 10;

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(ProgramFacts facts, Findings out) {
    double most = facts.book().house().maxSurvivorsPerAcre();
    for (WeedOutcome weed : facts.season().weeds()) {
      DriverKind driver = weed.pressure().driver();
      About about = About.PROGRAM.withWeed(weed.pressure().weed().id());
      if (driver == DriverKind.ZERO) {
        if (weed.allSurvivorsPerAcre() >= 1) {
          out.warn(this, about, () -> text(weed, weed.allSurvivorsPerAcre(), 0, "driver: zero"));
        }
      } else if (driver.isDriver() && Quantity.exceeds(weed.survivorsPerAcre(), most)) {
        out.add(
            this,
            Quantity.exceeds(weed.survivorsPerAcre(), MANY * most) ? Severity.WARN : Severity.NOTE,
            about,
            () -> text(weed, weed.survivorsPerAcre(), most, "house rule maxSurvivors"));
      }
    }
  }

  private static Text text(WeedOutcome weed, double survivors, double most, String source) {
    String actual = Say.perAcre(survivors) + " /acre";
    String limit = Say.perAcre(most) + " /acre";
    return Text.of(
            Say.start(weed.pressure().weed().name())
                + ": "
                + plants(survivors)
                + " on an acre "
                + (most > 0 ? "that came up in time to matter " : "")
                + (Say.perAcre(survivors).equals("1") ? "lives" : "live")
                + " to harvest"
                + (most > 0 ? "; the house allows " + Say.perAcre(most) + "." : ", and none may."),
            source)
        .compared(actual, limit)
        .cleared(
            most > 0 && Quantity.exceeds(survivors, MANY * most)
                ? "an added pass or row cultivation before they set seed; they are too many to pull"
                : "an added pass, row cultivation, or roguing before they set seed");
  }

  /** {@code 1 plant}, {@code 2,000 plants}. */
  static String plants(double perAcre) {
    String count = Say.perAcre(perAcre);
    return count + (count.equals("1") ? " plant" : " plants");
  }
}
