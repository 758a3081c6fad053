package org.swathbook.testing;

import java.util.List;
import java.util.Map;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.HouseRules;
import org.swathbook.book.Journal;
import org.swathbook.book.PastSeason;
import org.swathbook.book.WeedPressure;
import org.swathbook.weather.StationWeather;

/** A book with other tables in the place of some of its own. */
public final class BookParts {
  private final Book book;
  private HouseRules house;
  private List<Field> fields;
  private List<WeedPressure> weeds;
  private Journal journal;
  private List<PastSeason> seasons;
  private Map<String, StationWeather> stations;

  private BookParts(Book book) {
    this.book = book;
    this.house = book.house();
    this.fields = book.fields();
    this.weeds = book.weeds();
    this.journal = book.journal();
    this.seasons = book.pastSeasons();
    this.stations = book.stations();
  }

  public static BookParts of(Book book) {
    return new BookParts(book);
  }

  public BookParts house(HouseRules others) {
    house = others;
    return this;
  }

  public BookParts fields(List<Field> others) {
    fields = others;
    return this;
  }

  public BookParts weeds(List<WeedPressure> others) {
    weeds = others;
    return this;
  }

  public BookParts journal(List<Application> others) {
    journal = new Journal(others);
    return this;
  }

  public BookParts pastSeasons(List<PastSeason> others) {
    seasons = others;
    return this;
  }

  public BookParts stations(Map<String, StationWeather> others) {
    stations = others;
    return this;
  }

  public Book whole() {
    return new Book(
        book.name(),
        book.season(),
        book.catalog(),
        house,
        book.crops(),
        book.passCost(),
        book.resprayExtra(),
        fields,
        weeds,
        journal,
        seasons,
        book.prices(),
        stations,
        book.scoutings(),
        book.notes());
  }
}
