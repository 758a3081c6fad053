package org.swathbook.rules.timing;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.RotationRow;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.ledger.Ledger;
import org.swathbook.ledger.LedgerEntry;
import org.swathbook.measure.Quantity;
import org.swathbook.program.ActiveDose;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.LabelUses;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.rules.UseFacts;
import org.swathbook.rules.UseRule;
import org.swathbook.rules.Where;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WeatherDay;

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
              + " date, a range by its long end; a note when less than a month is to spare.",
          List.of("Hager 2014, University of Illinois, carryover and rotational crops"),
          "fomesafen on 14 Jul and corn planted on 28 Apr, where 10 months are needed; nicosulfuron"
              + " last June at pH 8.0 and sorghum this May, where 18 months are needed",
          "fomesafen on 20 Jun and corn planted on 28 Apr; nicosulfuron last June at pH 7.0 and"
              + " sorghum this May, where 10 are needed");

  private static final long CLOSE_DAYS = 30;

  @Override
  public RuleCard card() {
    return CARD;
  }

  // Forwards.

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
        askInterval(facts.ingredient(), next, out);
      }
    }
  }

  private void judge(
      UseFacts facts, CropId next, List<RotationRow> rows, Source source, Findings out) {
    Optional<NextCrop> answer =
        NextCrop.of(
            rows,
            facts.field(),
            Optional.empty(),
            new ActiveDose(
                facts.ingredient(),
                org.swathbook.measure.Rate.lbPerAcre(
                    facts.mixLbPerAcre(), facts.ingredient().rateBasis())),
            facts.dose().product().formulation(),
            facts.date(),
            (sprayed, mm) -> rainInTraces(facts, mm));
    if (answer.isEmpty()) {
      askInterval(facts.ingredient(), next, out);
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
    String crop = cropName(facts.book(), next);
    if (planting.isBefore(a.certain())) {
      out.block(
          this,
          facts.about(),
          () -> tooSoon(facts.ingredient(), facts.date(), crop, planting, a, source));
    } else if (planting.isBefore(a.possible())) {
      askSoil(facts.ingredient(), next, out);
    } else if (a.interval().roughDays() > 0
        && ChronoUnit.DAYS.between(a.possible(), planting) < CLOSE_DAYS) {
      out.note(
          this,
          facts.about(),
          () ->
              Text.of(
                      Say.start(facts.ingredient())
                          + ": "
                          + Say.days(ChronoUnit.DAYS.between(a.possible(), planting))
                          + " to spare; do not plant "
                          + crop
                          + " before "
                          + Say.date(a.possible())
                          + ".",
                      source.text())
                  .compared(Say.date(planting), Say.date(a.possible())));
    }
  }

  private static Text tooSoon(
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
        .compared(Say.date(planting), Say.date(answer.certain()))
        .cleared(
            crop
                + " planted on or after "
                + Say.date(answer.certain())
                + ", another crop, or another active");
  }

  /** Median over the weather years; empty when in most of them it does not rain so much. */
  private static Optional<LocalDate> rainInTraces(UseFacts facts, double mm) {
    List<LocalDate> dates = new ArrayList<>();
    List<SeasonTrace> years = facts.traces().years();
    for (int y = 0; y < years.size(); y++) {
      SeasonTrace trace = years.get(y);
      int day = RainDay.of(trace, facts.timing().years().get(y).day(), mm);
      if (day < trace.days()) {
        dates.add(trace.bookDateOf(day));
      }
    }
    dates.sort(LocalDate::compareTo);
    int median = years.size() / 2;
    return median < dates.size() ? Optional.of(dates.get(median)) : Optional.empty();
  }

  // Backwards.

  /** What the journal holds against the crop of the season, whatever is sprayed on it. */
  public void judgeJournal(Book book, Field field, Findings out) {
    Ledger ledger = Ledger.of(book, field, List.of());
    for (LedgerEntry entry : ledger.inMonthsBefore(field.plantDate(), Ledger.ROTATION_MONTHS)) {
      Ingredient active = entry.active().ingredient();
      if (isForThisCrop(book, field, entry)) {
        continue;
      }
      Stated<List<RotationRow>> rows = active.rotationTo(field.crop());
      if (rows instanceof Stated.Value<List<RotationRow>> v) {
        judgeEntry(book, field, entry, v.value(), v.source(), out);
      } else if (rows.isUnknown()) {
        askInterval(active, field.crop(), out);
      }
    }
  }

  /** A listed spraying for the crop itself goes by its planting interval. */
  private static boolean isForThisCrop(Book book, Field field, LedgerEntry entry) {
    return entry.season() == book.season()
        && LabelUses.inCrop(entry.active().ingredient(), field).stream()
            .anyMatch(u -> u.isIn(Position.Phase.BEFORE_EMERGENCE));
  }

  private void judgeEntry(
      Book book,
      Field field,
      LedgerEntry entry,
      List<RotationRow> rows,
      Source source,
      Findings out) {
    Ingredient active = entry.active().ingredient();
    Optional<NextCrop> answer =
        NextCrop.of(
            rows,
            field,
            field.traits(),
            entry.active(),
            entry.product().formulation(),
            entry.date(),
            (sprayed, mm) -> rainObserved(book.station(field), sprayed, mm));
    if (answer.isEmpty()) {
      askInterval(active, field.crop(), out);
      return;
    }
    NextCrop a = answer.get();
    About about = About.PROGRAM.withIngredient(active.id()).withProduct(entry.product().id());
    if (field.plantDate().isBefore(a.certain())) {
      out.block(
          this,
          about,
          () ->
              tooSoon(
                  active,
                  entry.date(),
                  cropName(book, field.crop()),
                  field.plantDate(),
                  a,
                  source));
    } else if (field.plantDate().isBefore(a.possible())) {
      askSoil(active, field.crop(), out);
    }
  }

  /** The day by which so much rain has fallen after a spraying; empty where the record ends. */
  private static Optional<LocalDate> rainObserved(
      StationWeather station, LocalDate sprayed, double mm) {
    double sum = 0;
    LocalDate day = sprayed;
    while (Quantity.exceeds(mm, sum)) {
      day = day.plusDays(1);
      Optional<WeatherDay> weather = station.find(day);
      if (weather.isEmpty()) {
        return Optional.empty();
      }
      sum += weather.get().rainMm();
    }
    return Optional.of(day);
  }

  // Asked.

  private void askInterval(Ingredient active, CropId next, Findings out) {
    out.ask(
        this,
        About.PROGRAM.withIngredient(active.id()),
        () ->
            new Lookup(
                "months from " + active.name() + " to planting " + next,
                Where.ingredient(active, "rotation." + next, "rotational crops")));
  }

  private void askSoil(Ingredient active, CropId next, Findings out) {
    out.ask(
        this,
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

  private static String cropName(Book book, CropId crop) {
    return book.catalog().findCrop(crop.value()).map(c -> c.name()).orElse(crop.value());
  }
}
