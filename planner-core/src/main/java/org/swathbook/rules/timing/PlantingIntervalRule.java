package org.swathbook.rules.timing;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.PlantingBand;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Use;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.PlantingBands;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.rules.UseFacts;
import org.swathbook.rules.UseRule;
import org.swathbook.rules.Where;
import org.swathbook.rules.YearShare;

/** Days between a spraying and the planting of the crop, some of them counted only after rain. */
public final class PlantingIntervalRule implements UseRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("planting-interval"),
          Severity.BLOCK,
          "Are there enough days between the spraying and the planting?",
          "Days to planting are fewer than the interval of the rate's band in most weather years; a"
              + " rate between two bands takes the longer. Where the label asks for rain first, the"
              + " days count from the day it has fallen. Warns when more than one year in five"
              + " falls short, and notes it when fewer do. Between planting and emergence a use that"
              + " wants days before planting is closed.",
          List.of(
              "University of Illinois Extension bulletin 2012 no. 2, 2,4-D ester before soybean",
              "Michigan State University Extension 2016, dicamba before soybean"),
          "2,4-D ester 1.0 lb ae/acre 10 days before soybean, where 30 are needed; dicamba 0.25 lb"
              + " ae/acre 14 days before with 0.6 in of rain, where 1 in must fall first",
          "2,4-D ester 0.5 lb ae/acre 10 days before soybean, where 7 are needed; dicamba 0.25 lb"
              + " ae/acre when 1 in of rain has fallen 14 days before");

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
    if (facts.chosen().isEmpty() || facts.isInCrop()) {
      return;
    }
    Use use = facts.chosen().get();
    if (use.plantingInterval() instanceof Stated.Value<List<PlantingBand>> bands) {
      judge(facts, use, bands.value(), bands.source(), out);
    } else if (use.plantingInterval().isUnknown()
        && isForEarlierSpraying(use)
        && !isPlanted(facts)) {
      out.ask(this, facts.about(), () -> missing(facts, use));
    }
  }

  private static boolean isPlanted(UseFacts facts) {
    return facts.date().isAfter(facts.field().plantDate());
  }

  /** A use between planting and emergence alone has no days to wait. */
  private static boolean isForEarlierSpraying(Use use) {
    return use.positions().stream().anyMatch(p -> p != Position.PRE);
  }

  private static Lookup missing(UseFacts facts, Use use) {
    return new Lookup(
        "days from "
            + facts.ingredient().name()
            + " at "
            + Say.lb(facts.mixLbPerAcre(), facts.ingredient().rateBasis())
            + " to planting "
            + facts.cropName(),
        Where.use(facts.ingredient(), use, "plantingInterval", "planting intervals"));
  }

  private void judge(
      UseFacts facts, Use use, List<PlantingBand> bands, Source source, Findings out) {
    Optional<PlantingBand> band =
        PlantingBands.strictest(bands, facts.field(), facts.mixLbPerAcre());
    if (band.isEmpty()) {
      out.ask(this, facts.about(), () -> missing(facts, use));
      // More than the label waits for waits no shorter than the most that it does.
      band = PlantingBands.beyond(bands, facts.field(), facts.mixLbPerAcre());
    }
    if (band.isEmpty()) {
      return;
    }
    PlantingBand b = band.get();
    if (b.days() == 0 && b.rainMm().isEmpty()) {
      return;
    }
    int[] days = daysToPlanting(facts, b);
    YearShare share =
        new YearShare((int) Arrays.stream(days).filter(d -> d >= b.days()).count(), days.length);
    // Half the years are not most: a wait that is broken injures the crop or puts planting off.
    if (2 * share.met() <= share.years()) {
      out.block(this, facts.about(), () -> text(facts, bands, b, days, source));
    } else if (share.met() < share.years()) {
      if (share.isRisky()) {
        out.warn(this, facts.about(), () -> inSomeYears(facts, b, share, source));
      } else {
        out.note(this, facts.about(), () -> inSomeYears(facts, b, share, source));
      }
    }
  }

  private static Text inSomeYears(UseFacts facts, PlantingBand b, YearShare share, Source source) {
    return Text.of(
            Say.start(facts.ingredient())
                + ": the "
                + Say.days(b.days())
                + " to planting "
                + facts.cropName()
                + rainWords(b)
                + " are not met "
                + share.missedWords()
                + ".",
            source.text())
        .compared(share.missedWords(), Say.days(b.days()))
        .cleared("an earlier pass, or planting when the days are over");
  }

  /** By weather year; below zero where the rain that starts the clock does not come in time. */
  private static int[] daysToPlanting(UseFacts facts, PlantingBand band) {
    List<SeasonTrace> years = facts.traces().years();
    int[] days = new int[years.size()];
    for (int y = 0; y < days.length; y++) {
      days[y] = PlantingWait.days(band, years.get(y), facts.timing().years().get(y).day());
    }
    return days;
  }

  private static Text text(
      UseFacts facts, List<PlantingBand> bands, PlantingBand band, int[] days, Source source) {
    int[] sorted = days.clone();
    Arrays.sort(sorted);
    int median = sorted[(sorted.length - 1) / 2];
    boolean planted = isPlanted(facts);
    String actual = planted ? "it is planted" : median < 0 ? "none" : Say.days(median);
    // Where the rain has not come before planting, no date tells when the days will be over.
    String legal =
        planted
            ? "an active that needs no wait here"
            : median < 0 && band.rainMm().isPresent()
                ? "planting " + Say.days(band.days()) + " after " + rain(band) + " has fallen"
                : "planting on or after "
                    + Say.date(facts.field().plantDate().plusDays((long) band.days() - median));
    String lower =
        bands.stream()
            .filter(b -> b.days() <= median && b.upTo().isPresent())
            .findFirst()
            .map(b -> ", or at most " + Say.rate(b.upTo().get()))
            .orElse("");
    return Text.of(
            Say.start(facts.ingredient())
                + " at "
                + Say.lb(facts.mixLbPerAcre(), facts.ingredient().rateBasis())
                + " needs "
                + Say.days(band.days())
                + " before "
                + facts.cropName()
                + " is planted"
                + rainWords(band)
                + (planted
                    ? "; this pass comes after planting."
                    : "; this pass leaves " + actual + "."),
            source.text())
        .compared(actual, Say.days(band.days()))
        .cleared(legal + lower);
  }

  private static String rainWords(PlantingBand band) {
    return band.rainMm().isPresent() ? ", counted once " + rain(band) + " has fallen" : "";
  }

  private static String rain(PlantingBand band) {
    return Say.inches(band.rainMm().orElse(0) / 10) + " of rain";
  }
}
