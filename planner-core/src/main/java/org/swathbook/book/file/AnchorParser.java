package org.swathbook.book.file;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropStage;
import org.swathbook.measure.Inches;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Unit;
import org.swathbook.program.Anchor;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/**
 * When a pass is made: {@code planting}, a date, {@code 3 days before planting}, {@code 28 days
 * after planting}, {@code stage V3}, {@code when AMAPA is 3 in}.
 */
final class AnchorParser implements TextParser<Anchor> {
  private static final Pattern DAYS =
      Pattern.compile("(\\d{1,3}) days? (before|after) planting", Pattern.CASE_INSENSITIVE);
  private static final Pattern STAGE = Pattern.compile("stage (\\S.*)", Pattern.CASE_INSENSITIVE);
  private static final Pattern WEED =
      Pattern.compile("when (\\S.*?) (?:is|are) (.+)", Pattern.CASE_INSENSITIVE);
  private static final Pattern DATE = Pattern.compile("\\d{4}-.*");

  private final Names names;
  private final SeasonDates dates;
  private final Crop crop;

  AnchorParser(Names names, SeasonDates dates, Crop crop) {
    this.names = names;
    this.dates = dates;
    this.crop = crop;
  }

  @Override
  public Anchor parse(String text) {
    String t = text.strip();
    if (t.equalsIgnoreCase("planting")) {
      return new Anchor.FromPlanting(0);
    }
    Matcher days = DAYS.matcher(t);
    if (days.matches()) {
      int n = Integer.parseInt(days.group(1));
      return new Anchor.FromPlanting(days.group(2).equalsIgnoreCase("before") ? -n : n);
    }
    if (DATE.matcher(t).matches()) {
      return new Anchor.OnDate(dates.inSeason(t));
    }
    Matcher stage = STAGE.matcher(t);
    if (stage.matches()) {
      return new Anchor.AtStage(stage(stage.group(1)));
    }
    Matcher weed = WEED.matcher(t);
    if (weed.matches()) {
      return new Anchor.WhenWeedIs(names.weed(weed.group(1)).id(), height(weed.group(2)));
    }
    throw new MeasureException(
        "'"
            + text
            + "' is no time of a pass; write as planting, 2027-05-10, 28 days after planting,"
            + " stage V3, or when AMAPA is 3 in");
  }

  /** The crop's own spelling of a stage. */
  private String stage(String text) {
    OptionalInt place = crop.findStage(text);
    if (place.isEmpty()) {
      throw Names.unknown(
          text, "stage of " + crop.id(), crop.stages().stream().map(CropStage::name).toList());
    }
    return crop.stages().get(place.getAsInt()).name();
  }

  private static double height(String text) {
    double cm = Texts.in(Unit.CENTIMETRE, "3 in").parse(text);
    if (!(cm > 0)) {
      throw new MeasureException("'" + text + "' is no height; write for example '3 in'");
    }
    return cm;
  }

  /** The text that reads back to the same anchor, to the last bit of a height. */
  static String text(Anchor anchor) {
    if (anchor instanceof Anchor.WhenWeedIs w) {
      return "when " + w.weed() + " is " + heightText(w.heightCm());
    }
    return anchor.toString();
  }

  /** In inches, as people speak of weeds, when those few digits say it exactly; else in cm. */
  private static String heightText(double cm) {
    for (String text : List.of(inches(cm, 1), inches(cm, 2))) {
      if (Texts.in(Unit.CENTIMETRE, "3 in").parse(text) == cm) {
        return text;
      }
    }
    return exact(cm) + " cm";
  }

  private static String inches(double cm, int decimals) {
    return Numbers.decimals(Inches.ofCm(cm), decimals) + " in";
  }

  /** All digits that a number needs to be read back as the same, without an exponent. */
  static String exact(double value) {
    return new BigDecimal(Double.toString(value)).toPlainString();
  }
}
