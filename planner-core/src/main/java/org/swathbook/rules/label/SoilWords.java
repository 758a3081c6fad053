package org.swathbook.rules.label;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.book.Field;
import org.swathbook.book.SoilSample;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.RateRow;
import org.swathbook.catalog.SoilCondition;
import org.swathbook.catalog.Source;
import org.swathbook.measure.Numbers;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.Say;
import org.swathbook.rules.Text;
import org.swathbook.rules.UseFacts;
import org.swathbook.rules.Where;

/** What is said of a soil that a label refuses or limits, or of which a fact is blank. */
final class SoilWords {
  private SoilWords() {}

  static Text refused(UseFacts facts, SoilSample sample, RateRow row, Source source) {
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

  static Text tooMuch(UseFacts facts, SoilSample sample, double high, Source source) {
    String actual = Say.lbBeside(facts.mixLbPerAcre(), high, facts.ingredient().rateBasis());
    String limit = Say.lbBeside(high, facts.mixLbPerAcre(), facts.ingredient().rateBasis());
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

  static Lookup blank(UseFacts facts, SoilCondition when) {
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

  /** {@code below 7.5}: 'before' is for stages and heights. */
  static String below(Limit limit) {
    return limit.toString().replace("before", "below").replace("to ", "up to ");
  }
}
