package org.swathbook.rules.timing;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.swathbook.book.Book;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Source;
import org.swathbook.measure.Period;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.NextCrop;
import org.swathbook.rules.Rule;
import org.swathbook.rules.Say;
import org.swathbook.rules.Text;
import org.swathbook.rules.Where;
import org.swathbook.rules.YearShare;

/** What is said and asked of intervals before a next crop. */
final class NextCropWords {
  /** Fewer days to spare than this are worth a word. */
  static final long CLOSE_DAYS = 30;

  private NextCropWords() {}

  /**
   * @param of when it was sprayed, as {@code " of 20 Jun 2026"}; empty for a pass to come
   */
  static Text toSpare(
      Ingredient active,
      String of,
      String crop,
      LocalDate planting,
      LocalDate earliest,
      Source source) {
    return Text.of(
            Say.start(active)
                + of
                + ": "
                + Say.days(ChronoUnit.DAYS.between(earliest, planting))
                + " to spare; do not plant "
                + crop
                + " before "
                + Say.date(earliest)
                + ".",
            source.text())
        .compared(Say.date(planting), Say.date(earliest));
  }

  /** Legal on the median day, and too late where weather holds the sprayer up. */
  static Text inSomeYears(
      Ingredient active,
      YearShare share,
      String crop,
      LocalDate planting,
      LocalDate earliest,
      Source source) {
    return Text.of(
            Say.start(active)
                + ": "
                + share.missedWords()
                + " weather delays this pass until "
                + crop
                + " may no longer be planted on "
                + Say.date(planting)
                + ".",
            source.text())
        .compared(Say.date(planting), Say.date(earliest) + " in the median year")
        .cleared("an earlier pass, " + crop + " planted later, or another active");
  }

  static Text tooSoon(
      Ingredient active,
      LocalDate sprayed,
      String crop,
      LocalDate planting,
      NextCrop answer,
      Source source) {
    return Text.of(
            Say.start(active)
                + " of "
                + Say.date(sprayed)
                + " needs "
                + answer.interval()
                + " before "
                + crop
                + ", which is to be planted on "
                + Say.date(planting)
                + ".",
            source.text())
        .compared(
            Say.date(planting),
            answer.interval().equals(Period.NEVER) ? "no date" : Say.date(answer.certain()))
        .cleared(
            answer.interval().equals(Period.NEVER)
                ? "a field bioassay that shows no injury, another crop, or another active"
                : crop
                    + " planted on or after "
                    + Say.date(answer.certain())
                    + ", another crop, or another active");
  }

  static void askInterval(Rule rule, Ingredient active, CropId next, Findings out) {
    out.ask(
        rule,
        About.PROGRAM.withIngredient(active.id()),
        () ->
            new Lookup(
                "months from " + active.name() + " to planting " + next,
                Where.ingredient(active, "rotation." + next, "rotational crops")));
  }

  static void askSoil(Rule rule, Ingredient active, CropId next, Findings out) {
    out.ask(
        rule,
        About.PROGRAM.withIngredient(active.id()),
        () ->
            new Lookup(
                "soil facts or rain since the spraying, on which the interval from "
                    + active.name()
                    + " to "
                    + next
                    + " depends",
                Where.field("soilTexture, organicMatterPct and soilPh") + "; rain gauge"));
  }

  static String cropName(Book book, CropId crop) {
    return book.catalog().findCrop(crop.value()).map(c -> c.name()).orElse(crop.value());
  }
}
