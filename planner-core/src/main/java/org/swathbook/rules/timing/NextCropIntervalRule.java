package org.swathbook.rules.timing;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.RotationRow;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.measure.Rate;
import org.swathbook.program.ActiveDose;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.NextCrop;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Severity;
import org.swathbook.rules.UseFacts;
import org.swathbook.rules.UseRule;
import org.swathbook.rules.Where;
import org.swathbook.rules.YearShare;

/**
 * What a spraying forbids to be planted, and until when: forwards from this pass to the next crops,
 * backwards from the journal to the crop of the season.
 */
public final class NextCropIntervalRule implements UseRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("next-crop-interval"),
          Severity.BLOCK,
          "May the next crop, and this one after what was sprayed before, be planted on its date?",
          "Forwards: the date of the pass and the interval, in calendar months, are later than the"
              + " next planting, for every following crop named. Backwards: the same for what the"
              + " journal of the last 40 months holds against this crop. Rows go by rate, soil and"
              + " date, a range by its long end. A note when less than a month is to spare, a warning when"
              + " weather delays the pass too far in more than one year of five.",
          List.of("Hager 2014, University of Illinois, carryover and rotational crops"),
          "fomesafen on 14 Jul and corn planted on 28 Apr, where 10 months are needed; nicosulfuron"
              + " last June at pH 8.0 and sorghum this May, where 18 months are needed",
          "fomesafen on 20 Jun and corn planted on 28 Apr; nicosulfuron last June at pH 7.0 and"
              + " sorghum this May, where 10 are needed");

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
    Field field = facts.field();
    if (field.nextCrops().isEmpty()) {
      if (facts.ingredient().hasSoilActivity()) {
        out.ask(
            this,
            About.PROGRAM,
            () ->
                new Lookup(
                    "the next crop, on which the intervals of what is sprayed depend",
                    Where.field("nextCrop")));
      }
      return;
    }
    for (CropId next : field.nextCrops()) {
      Stated<List<RotationRow>> rows = facts.ingredient().rotationTo(next);
      if (rows instanceof Stated.Value<List<RotationRow>> v) {
        judge(facts, next, v.value(), v.source(), out);
      } else if (rows.isUnknown()) {
        NextCropWords.askInterval(this, facts.ingredient(), next, out);
      }
    }
  }

  private void judge(
      UseFacts facts, CropId next, List<RotationRow> rows, Source source, Findings out) {
    Optional<NextCrop> answer = answer(facts, rows, facts.date(), mm -> rainInTraces(facts, mm));
    if (answer.isEmpty()) {
      NextCropWords.askInterval(this, facts.ingredient(), next, out);
      return;
    }
    NextCrop a = answer.get();
    if (facts.field().nextCropPlantDate().isEmpty()) {
      if (a.interval().roughDays() > 0) {
        out.ask(
            this,
            About.PROGRAM,
            () ->
                new Lookup(
                    "planting date of the next crop, on which the intervals of what is sprayed"
                        + " depend",
                    Where.field("nextCropPlantDate")));
      }
      return;
    }
    LocalDate planting = facts.field().nextCropPlantDate().get();
    String crop = NextCropWords.cropName(facts.book(), next);
    if (planting.isBefore(a.certain())) {
      out.block(
          this,
          facts.about(),
          () -> NextCropWords.tooSoon(facts.ingredient(), facts.date(), crop, planting, a, source));
    } else if (planting.isBefore(a.possible())) {
      NextCropWords.askSoil(this, facts.ingredient(), next, out);
    } else if (a.interval().roughDays() > 0
        && ChronoUnit.DAYS.between(a.possible(), planting) < NextCropWords.CLOSE_DAYS) {
      YearShare share = share(facts, rows, planting);
      if (share.isRisky()) {
        out.warn(
            this,
            facts.about(),
            () ->
                NextCropWords.inSomeYears(
                    facts.ingredient(), share, crop, planting, a.possible(), source));
      } else {
        out.note(
            this,
            facts.about(),
            () ->
                NextCropWords.toSpare(
                    facts.ingredient(), "", crop, planting, a.possible(), source));
      }
    }
  }

  /** Years in which the day that weather leaves for the pass still is early enough. */
  private static YearShare share(UseFacts facts, List<RotationRow> rows, LocalDate planting) {
    List<SeasonTrace> years = facts.traces().years();
    int met = 0;
    for (int y = 0; y < years.size(); y++) {
      SeasonTrace trace = years.get(y);
      int day = facts.timing().years().get(y).day();
      LocalDate earliest =
          answer(facts, rows, trace.bookDateOf(day), mm -> rainDay(trace, day, mm))
              .map(NextCrop::certain)
              .orElse(LocalDate.MIN);
      if (!planting.isBefore(earliest)) {
        met++;
      }
    }
    return new YearShare(met, years.size());
  }

  private static Optional<LocalDate> rainDay(SeasonTrace trace, int sprayed, double mm) {
    int day = RainDay.of(trace, sprayed, mm);
    return day < trace.days() ? Optional.of(trace.bookDateOf(day)) : Optional.empty();
  }

  private static Optional<NextCrop> answer(
      UseFacts facts,
      List<RotationRow> rows,
      LocalDate sprayed,
      Function<Double, Optional<LocalDate>> rain) {
    return NextCrop.of(
        rows,
        facts.field(),
        Optional.empty(),
        new ActiveDose(
            facts.ingredient(),
            Rate.lbPerAcre(facts.mixLbPerAcre(), facts.ingredient().rateBasis())),
        facts.dose().product().formulation(),
        sprayed,
        (from, mm) -> rain.apply(mm));
  }

  /** Median over the weather years; empty when in most of them it does not rain so much. */
  private static Optional<LocalDate> rainInTraces(UseFacts facts, double mm) {
    List<LocalDate> dates = new ArrayList<>();
    List<SeasonTrace> years = facts.traces().years();
    for (int y = 0; y < years.size(); y++) {
      rainDay(years.get(y), facts.timing().years().get(y).day(), mm).ifPresent(dates::add);
    }
    dates.sort(LocalDate::compareTo);
    int median = years.size() / 2;
    return median < dates.size() ? Optional.of(dates.get(median)) : Optional.empty();
  }

  /** What the journal holds against the crop of the season, whatever is sprayed on it. */
  public void judgeJournal(Book book, Field field, Findings out) {
    JournalRotation.ofRotation(this, book, field, out).judge();
  }
}
