package org.swathbook.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.CropEconomics;
import org.swathbook.book.Field;
import org.swathbook.book.Journal;
import org.swathbook.book.PastSeason;
import org.swathbook.book.Scouting;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropId;
import org.swathbook.ledger.Ledger;
import org.swathbook.program.FieldId;
import org.swathbook.weather.StationWeather;

/** The book as it would have been for one field in a past season, judged by that season's row. */
final class PastBook {
  private PastBook() {}

  /** The field in that season's crop, traits, dates and tillage. */
  static Field field(Book book, Field today, PastSeason row) {
    Optional<PastSeason> next = next(book, row);
    return new Field(
        today.id(),
        today.grower(),
        today.name(),
        today.acres(),
        row.crop(),
        row.traits(),
        yieldGoal(book, today, row),
        today.rowSpacingCm(),
        row.plantDate().orElse(today.plantDate()),
        row.harvestDate(),
        row.tillage(),
        today.soilTextures(),
        today.organicMatterPct(),
        today.soilPh(),
        today.residuePct(),
        today.station(),
        today.latitude(),
        today.longitude(),
        before(book, row),
        next.map(n -> List.of(n.crop()))
            .orElse(row.season() == book.season() - 1 ? List.of(today.crop()) : List.of()),
        next.flatMap(PastSeason::plantDate)
            .or(
                () ->
                    row.season() == book.season() - 1
                        ? Optional.of(today.plantDate())
                        : Optional.empty()),
        today.uses(),
        today.irrigated(),
        today.state(),
        today.county(),
        today.erodible(),
        today.waterDistanceM(),
        today.waters(),
        today.neighbors());
  }

  /** The field's own goal is one of today's crop; of another crop the book's goes. */
  private static double yieldGoal(Book book, Field today, PastSeason row) {
    CropEconomics economics = book.crops().get(row.crop());
    return row.crop().equals(today.crop()) || economics == null
        ? today.yieldGoalBuPerAcre()
        : economics.yieldGoalBuPerAcre();
  }

  private static Optional<PastSeason> next(Book book, PastSeason row) {
    return of(book, row, row.season() + 1);
  }

  private static Optional<CropId> before(Book book, PastSeason row) {
    return of(book, row, row.season() - 1).map(PastSeason::crop);
  }

  private static Optional<PastSeason> of(Book book, PastSeason row, int season) {
    for (PastSeason p : book.pastSeasons()) {
      if (p.season() == season && p.field().equals(row.field())) {
        return Optional.of(p);
      }
    }
    return Optional.empty();
  }

  /**
   * What any rule asks of the journal in a season lies in it and five years before it: two calendar
   * years of caps, {@link Ledger#ROTATION_MONTHS} of next crops.
   */
  private static final int YEARS_ASKED = 5;

  private static Journal journal(Book book, Field field, PastSeason row) {
    int first = row.season() - YEARS_ASKED;
    List<Application> asked = new ArrayList<>();
    for (Application a : book.journal().of(field.id())) {
      int year = a.date().getYear();
      if (year >= first && year <= row.season()) {
        asked.add(a);
      }
    }
    return new Journal(asked);
  }

  /** A book of that season that holds this field alone. */
  static Book of(Book book, Field field, PastSeason row) {
    return of(book, field, row, book.weedsOf(field.id()), journal(book, field, row));
  }

  /** The same with these weeds, in which nothing was sprayed. */
  static Book unsprayed(Book book, Field field, PastSeason row, List<WeedPressure> weeds) {
    return of(book, field, row, weeds, Journal.EMPTY);
  }

  private static Book of(
      Book book, Field field, PastSeason row, List<WeedPressure> weeds, Journal journal) {
    Map<CropId, CropEconomics> crops = book.crops();
    if (!crops.containsKey(row.crop())) {
      // Money is read by nobody here; a crop that is grown no more needs no price in the book.
      crops = new LinkedHashMap<>(crops);
      crops.put(row.crop(), new CropEconomics(1, field.yieldGoalBuPerAcre()));
    }
    return new Book(
        book.name(),
        row.season(),
        book.catalog(),
        book.house(),
        crops,
        book.passCost(),
        book.resprayExtra(),
        List.of(field),
        weeds,
        journal,
        book.pastSeasons(),
        book.prices(),
        book.stations(),
        stagesSeen(book, field, row),
        List.of());
  }

  /** The book of a past season with every field that has a row of it. */
  static Book ofSeason(Book book, int season) {
    List<Field> fields = new ArrayList<>();
    for (Field f : book.fields()) {
      book.pastSeasons().stream()
          .filter(p -> p.field().equals(f.id()) && p.season() == season)
          .findFirst()
          .ifPresent(row -> fields.add(field(book, f, row)));
    }
    return new Book(
        book.name(),
        season,
        book.catalog(),
        book.house(),
        book.crops(),
        book.passCost(),
        book.resprayExtra(),
        fields,
        book.weeds(),
        book.journal(),
        book.pastSeasons(),
        book.prices(),
        book.stations(),
        List.of());
  }

  /** The same book with other weather, in which nobody has been out yet. */
  static Book withStations(Book past, Map<String, StationWeather> stations) {
    return past.withStations(stations).withScoutings(List.of());
  }

  /** The same book with nothing sprayed yet on a field in a season. */
  static Book without(Book past, FieldId field, int season) {
    Journal rest =
        new Journal(past.journal().of(field).stream().filter(a -> a.season() != season).toList());
    return past.withJournal(rest);
  }

  /** Crop stages as the journal has them count as seen, and the model goes by them. */
  private static List<Scouting> stagesSeen(Book book, Field field, PastSeason row) {
    Crop crop = book.catalog().crop(row.crop());
    List<Scouting> out = new ArrayList<>();
    for (Application a : book.journal().of(field.id())) {
      String stage = a.season() == row.season() ? a.position().strip() : "";
      if (!stage.isEmpty() && crop.findStage(stage).isPresent()) {
        out.add(
            new Scouting(
                a.date(),
                field.id(),
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(stage),
                0));
      }
    }
    return List.copyOf(out);
  }
}
