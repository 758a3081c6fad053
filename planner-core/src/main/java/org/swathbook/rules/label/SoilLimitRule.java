package org.swathbook.rules.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Field;
import org.swathbook.book.SoilSample;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.RateRow;
import org.swathbook.catalog.SoilCondition;
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
                      + limit
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
                            + limit
                            + "; this field has "
                            + Numbers.plain(ph)
                            + ".",
                        source.text())
                    .compared("pH " + Numbers.plain(ph), "pH " + limit)
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
          out.block(this, facts.about(), () -> refused(facts, sample, a.row().get(), source));
          return;
        }
        double high = allowed.get().high().lbPerAcre();
        // Above the highest rate of all soils is rate-above-use, not a matter of this soil.
        if (Quantity.exceeds(facts.mixLbPerAcre(), high)
            && !Quantity.exceeds(facts.mixLbPerAcre(), mostAnywhere)) {
          out.block(this, facts.about(), () -> tooMuch(facts, sample, high, source));
          return;
        }
      }
    }
    for (SoilSample sample : samples) {
      Answer a = answer(rows, sample);
      if (a.doubtful().isPresent()) {
        out.ask(this, facts.about(), () -> blank(facts, a.doubtful().get().when()));
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

  private static Text refused(UseFacts facts, SoilSample sample, RateRow row, Source source) {
    return Text.of(
            Say.start(facts.ingredient())
                + " is refused in "
                + facts.cropName()
                + " on this soil ("
                + sample
                + "): the label does not allow it on "
                + words(row.when())
                + ".",
            source.text())
        .compared(sample.toString(), "not on " + words(row.when()))
        .cleared("an active without that limit, or only the ground outside it");
  }

  private static Text tooMuch(UseFacts facts, SoilSample sample, double high, Source source) {
    String actual = Say.lb(facts.mixLbPerAcre(), facts.ingredient().rateBasis());
    String limit = Say.lb(high, facts.ingredient().rateBasis());
    return Text.of(
            Say.start(facts.ingredient())
                + ": "
                + actual
                + " is above the "
                + limit
                + " allowed on this soil ("
                + sample
                + slope(facts.field())
                + ").",
            source.text())
        .compared(actual, limit)
        .cleared("at most " + limit + " on that ground");
  }

  private static String slope(Field field) {
    return field.erodible().orElse(false)
        ? ", highly erodible"
            + (field.residuePct().isPresent()
                ? " with " + Numbers.plain(field.residuePct().getAsDouble()) + " % residue"
                : "")
        : "";
  }

  private static Lookup blank(UseFacts facts, SoilCondition when) {
    Field f = facts.field();
    List<String> columns = new ArrayList<>();
    if (!when.textures().isEmpty() && f.soilTextures().isEmpty()) {
      columns.add("soilTexture");
    }
    if (when.organicMatterPct().isPresent() && f.organicMatterPct().isEmpty()) {
      columns.add("organicMatterPct");
    }
    if (when.soilPh().isPresent() && f.soilPh().isEmpty()) {
      columns.add("soilPh");
    }
    if (when.erodible().isPresent() && f.erodible().isEmpty()) {
      columns.add("erodible");
    }
    if (when.residuePct().isPresent() && f.residuePct().isEmpty()) {
      columns.add("residuePct");
    }
    return new Lookup(
        Say.list(columns)
            + " of the field, on which the rate of "
            + facts.ingredient().name()
            + " depends ("
            + words(when)
            + ")",
        Where.field(Say.list(columns)));
  }

  /** A condition in words: {@code sandy loam, organic matter before 2 %}. */
  private static String words(SoilCondition when) {
    List<String> parts = new ArrayList<>();
    if (!when.textures().isEmpty()) {
      parts.add(
          String.join(" or ", when.textures().stream().sorted().map(t -> t.spelling()).toList()));
    }
    when.organicMatterPct().ifPresent(l -> parts.add("organic matter " + below(l) + " %"));
    when.soilPh().ifPresent(l -> parts.add("pH " + below(l)));
    when.erodible().ifPresent(e -> parts.add(e ? "highly erodible ground" : "level ground"));
    when.residuePct().ifPresent(l -> parts.add("residue " + below(l) + " %"));
    return parts.isEmpty() ? "any soil" : String.join(" with ", parts);
  }

  private static String below(Limit limit) {
    return limit.toString().replace("before", "below").replace("to ", "up to ");
  }
}
