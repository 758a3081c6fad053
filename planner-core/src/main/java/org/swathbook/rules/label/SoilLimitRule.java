package org.swathbook.rules.label;

import java.util.List;
import java.util.Optional;
import org.swathbook.book.SoilSample;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.RateRow;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Use;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.RateRange;
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

/** Soils that a label refuses, or on which it allows less than elsewhere. */
public final class SoilLimitRule implements UseRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("soil-limit"),
          Severity.BLOCK,
          "Does the label allow this active, at this rate, on every soil of the field?",
          "Any soil named for the field is in a refused class of texture, organic matter, pH,"
              + " slope or residue, or the rate is above what the strictest of them allows. 'Below"
              + " pH 7.5' refuses 7.5. A fact that a stated limit needs and that is blank is asked.",
          List.of(
              "Ladlie et al. 1976, metribuzin and soil pH",
              "Coble & Schrader 1973, metribuzin and organic matter"),
          "metribuzin on sandy loam with 1.1 % organic matter; metribuzin at pH 7.5; atrazine 2.0"
              + " lb on highly erodible ground with little residue, where 1.6 is the most",
          "metribuzin 0.38 lb on silt loam with 2.6 % organic matter and pH 6.6");

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
    if (use.rates() instanceof Stated.Value<List<RateRow>> rows) {
      judgeRows(facts, use, rows.value(), rows.source(), out);
    }
    if (use.soilPh() instanceof Stated.Value<Limit> ph) {
      judgePh(facts, ph.value(), ph.source(), out);
    } else if (use.soilPh().isUnknown() && facts.ingredient().hasSoilActivity()) {
      out.ask(
          this,
          facts.about(),
          () ->
              new Lookup(
                  "soil pH limit of " + facts.ingredient().name() + " in " + facts.cropName(),
                  Where.use(facts.ingredient(), use, "soilPh", "soil restrictions")));
    }
  }

  private void judgePh(UseFacts facts, Limit limit, Source source, Findings out) {
    List<Double> phs = facts.field().soilPh();
    if (phs.isEmpty()) {
      out.ask(
          this,
          facts.about(),
          () ->
              new Lookup(
                  "soil pH of the field ("
                      + facts.ingredient().name()
                      + " is allowed at pH "
                      + SoilWords.below(limit)
                      + ")",
                  "soil test; then " + Where.field("soilPh")));
      return;
    }
    for (double ph : phs) {
      if (!limit.allows(ph)) {
        out.block(
            this,
            facts.about(),
            () ->
                Text.of(
                        Say.start(facts.ingredient())
                            + " is allowed at soil pH "
                            + SoilWords.below(limit)
                            + "; this field has "
                            + Numbers.plain(ph)
                            + ".",
                        source.text())
                    .compared("pH " + Numbers.plain(ph), "pH " + SoilWords.below(limit))
                    .cleared(
                        "an active without a pH limit, or only the part of the field within it"));
        return;
      }
    }
  }

  /** What the rows say of one sample: the first that fits, unless a doubtful one comes before. */
  private record Answer(Optional<RateRow> row, Optional<RateRow> doubtful) {}

  private static Answer answer(List<RateRow> rows, SoilSample sample) {
    for (RateRow row : rows) {
      switch (sample.fits(row.when())) {
        case YES -> {
          return new Answer(Optional.of(row), Optional.empty());
        }
        case UNKNOWN -> {
          return new Answer(Optional.empty(), Optional.of(row));
        }
        case NO -> {}
      }
    }
    return new Answer(Optional.empty(), Optional.empty());
  }

  private void judgeRows(UseFacts facts, Use use, List<RateRow> rows, Source source, Findings out) {
    List<SoilSample> samples = SoilSample.of(facts.field());
    double mostAnywhere =
        rows.stream()
            .flatMap(r -> r.rates().stream())
            .mapToDouble(r -> r.high().lbPerAcre())
            .max()
            .orElse(0);
    for (SoilSample sample : samples) {
      Answer a = answer(rows, sample);
      if (a.row().isPresent()) {
        Optional<RateRange> allowed = a.row().get().rates();
        if (allowed.isEmpty()) {
          out.block(
              this, facts.about(), () -> SoilWords.refused(facts, sample, a.row().get(), source));
          return;
        }
        double high = allowed.get().high().lbPerAcre();
        // Above the highest rate of all soils is rate-above-use, not a matter of this soil.
        if (Quantity.exceeds(facts.mixLbPerAcre(), high)
            && !Quantity.exceeds(facts.mixLbPerAcre(), mostAnywhere)) {
          out.block(this, facts.about(), () -> SoilWords.tooMuch(facts, sample, high, source));
          return;
        }
      }
    }
    for (SoilSample sample : samples) {
      Answer a = answer(rows, sample);
      if (a.doubtful().isPresent()) {
        out.ask(this, facts.about(), () -> SoilWords.blank(facts, a.doubtful().get().when()));
        return;
      }
      if (a.row().isEmpty()) {
        out.ask(
            this,
            facts.about(),
            () ->
                new Lookup(
                    "rate of " + facts.ingredient().name() + " on " + sample,
                    Where.use(facts.ingredient(), use, "rate", "rates by soil")));
        return;
      }
    }
  }
}
