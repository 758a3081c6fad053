package org.swathbook.rules.label;

import java.util.List;
import java.util.OptionalDouble;
import org.swathbook.book.SoilRates;
import org.swathbook.catalog.RateRow;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Use;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
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

/** More of an active in one spraying than the use allows on any soil. */
public final class RateAboveUseRule implements UseRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("rate-above-use"),
          Severity.BLOCK,
          "Is more of an active in the tank than one spraying may bring?",
          "The rate of an active, every product in the tank added up, is above the highest that the"
              + " use allows on any soil; what one soil allows less is soil-limit's.",
          List.of(Say.COMMON_PRACTICE),
          "glyphosate 11.3 lb ae/acre, a slipped decimal; flumioxazin 0.1 lb ai/acre in soybean,"
              + " where 0.096 is the most",
          "glyphosate 1.125 lb ae/acre, 32 fl oz of a 4.5 lb ae/gal product, against 1.13");

  private static final double SLIPPED_DECIMAL = 3;

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public boolean readsAmount() {
    return true;
  }

  @Override
  public void judge(UseFacts facts, Findings out) {
    if (facts.chosen().isEmpty()) {
      return;
    }
    Use use = facts.chosen().get();
    if (use.rates().isUnknown()) {
      out.ask(
          this,
          facts.about(),
          () ->
              new Lookup(
                  "rate of " + facts.ingredient().name() + " in " + facts.cropName(),
                  Where.use(facts.ingredient(), use, "rate", "directions for the crop")));
      return;
    }
    if (use.rates() instanceof Stated.Value<List<RateRow>> rows) {
      OptionalDouble most = most(rows.value());
      if (most.isPresent() && Quantity.exceeds(facts.mixLbPerAcre(), most.getAsDouble())) {
        out.block(
            this, facts.about(), () -> text(facts, use, most.getAsDouble(), rows.source().text()));
      }
    }
  }

  /** The highest rate of any row. */
  private static OptionalDouble most(List<RateRow> rows) {
    return rows.stream()
        .flatMap(r -> r.rates().stream())
        .mapToDouble(r -> r.high().lbPerAcre())
        .max();
  }

  private static Text text(UseFacts facts, Use use, double anySoil, String source) {
    double most =
        SoilRates.of(use, facts.field()) instanceof SoilRates.Allowed a
            ? a.range().high().lbPerAcre()
            : anySoil;
    String actual = Say.lbBeside(facts.mixLbPerAcre(), most, facts.ingredient().rateBasis());
    String limit = Say.lbBeside(most, facts.mixLbPerAcre(), facts.ingredient().rateBasis());
    return Text.of(
            Say.start(facts.ingredient())
                + ": "
                + actual
                + " in one spraying is above the "
                + limit
                + " allowed in "
                + facts.cropName()
                + slipped(facts, use, most),
            source)
        .compared(actual, limit)
        .cleared(remedy(facts, most));
  }

  /** Ten times a rate that the use allows is named as what it most likely is. */
  private static String slipped(UseFacts facts, Use use, double most) {
    double tenth = facts.mixLbPerAcre() / 10;
    if (SoilRates.of(use, facts.field()) instanceof SoilRates.Allowed a
        && !Quantity.exceeds(a.range().low().lbPerAcre(), tenth)
        && !Quantity.exceeds(tenth, a.range().high().lbPerAcre())) {
      return "; a tenth of it, "
          + Say.lb(tenth, facts.ingredient().rateBasis())
          + ", would be a rate of that use: check the decimal point.";
    }
    return facts.mixLbPerAcre() > SLIPPED_DECIMAL * most ? "; check the decimal point." : ".";
  }

  private static String remedy(UseFacts facts, double most) {
    double others = facts.mixLbPerAcre() - facts.active().lbPerAcre();
    double left = most - others;
    if (left <= 0) {
      return "leave it out: the other products bring the whole rate";
    }
    Rate now = facts.dose().rate();
    Rate largest =
        Say.practical(
            facts.dose().product(),
            new Rate(
                now.amount() * left / facts.active().lbPerAcre(),
                now.unit(),
                now.area(),
                now.basis()));
    return largest.amount() > 0
        ? "at most " + Say.productRate(largest) + " of " + facts.dose().product().name()
        : "another product: one practical step of this one is already too much";
  }
}
