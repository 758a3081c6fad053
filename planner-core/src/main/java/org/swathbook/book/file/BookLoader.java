package org.swathbook.book.file;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.swathbook.book.Book;
import org.swathbook.book.CropEconomics;
import org.swathbook.book.Field;
import org.swathbook.book.HouseRules;
import org.swathbook.book.Journal;
import org.swathbook.book.PastSeason;
import org.swathbook.book.Prices;
import org.swathbook.book.Scouting;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.file.CatalogLoader;
import org.swathbook.source.Mark;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;
import org.swathbook.weather.StationWeather;

/**
 * Reads a whole book. Needed are {@code book.yaml}, {@code fields.csv}, {@code weeds.csv}, {@code
 * applications.csv} and the weather of every station that a field names; the rest may be missing,
 * which becomes a note where it matters.
 */
public final class BookLoader {
  private static final String BOOK = "book.yaml";

  private final CatalogLoader catalogs;

  public BookLoader() {
    this(new CatalogLoader());
  }

  /** Shares the catalogs that a loader has made already. */
  public BookLoader(CatalogLoader catalogs) {
    this.catalogs = catalogs;
  }

  /**
   * The book in a folder.
   *
   * @throws ProblemsException with every problem of form and meaning in its files
   */
  public Book load(Path folder) {
    return load(folder, Optional.empty(), f -> true);
  }

  /** The same with another catalog in the place of the one that the book names. */
  public Book load(Path folder, CatalogPlace catalog) {
    return load(folder, Optional.of(catalog), f -> true);
  }

  /**
   * A book of which only one field is asked about: weather of other stations is not read, since it
   * takes longer than all else, nor is anything wrong in it found.
   *
   * @param typed id of the field as somebody wrote it; all weather is read when the book has none
   *     of that id
   */
  public Book loadFor(Path folder, String typed) {
    return load(folder, Optional.empty(), f -> f.id().matches(typed));
  }

  private Book load(Path folder, Optional<CatalogPlace> other, Predicate<Field> asked) {
    if (!Files.isDirectory(folder)) {
      throw ProblemsException.of(
          Mark.startOf(folder.toString()),
          "there is no such folder",
          "name the folder of a book, which holds its book.yaml");
    }
    Problems problems = new Problems();
    List<String> notes = new ArrayList<>();
    BookYaml yaml = bookYaml(folder, problems);
    Optional<Catalog> catalog =
        catalog(other.orElseGet(() -> CatalogPlace.of(folder, yaml)), problems);
    if (catalog.isEmpty()) {
      // Without a catalog every name in the tables would look unknown.
      throw new ProblemsException(problems);
    }
    Names names = new Names(catalog.get());
    Optional<Map<CropId, CropEconomics>> crops = BookYamlReader.crops(yaml, names, problems);
    SeasonDates dates = new SeasonDates(yaml.season());
    int before = problems.count();
    FieldList fields = new FieldsReader(names, crops, dates, problems).read(folder);
    List<Field> sound = problems.count() == before ? fields.fields() : List.of();
    // Weather takes longest, and knows nothing of the tables that are read meanwhile.
    List<String> named =
        ofAsked(fields.fields(), asked).stream().map(Field::station).distinct().sorted().toList();
    ReadBeside<Map<String, StationWeather>> weather =
        ReadBeside.begin((found, said) -> WeatherReader.read(folder, named, found, said));
    // Before the journal is begun, which alone keeps two processors busy.
    ReadBeside<List<PastSeason>> seasons =
        ReadBeside.beginIf(
            SeasonsReader.TABLE.isLong(folder),
            (found, said) -> pastSeasons(folder, names, fields, dates, found, said));
    HouseRules house = new HouseRulesReader(names, problems).read(yaml.houseRules());
    before = problems.count();
    List<WeedPressure> weeds = new WeedsReader(names, fields, problems).read(folder);
    boolean weedsRead = problems.count() == before;
    Prices prices =
        new StockReader(names, sound, prices(folder, names, problems, notes), problems)
            .read(folder);
    Journal journal = new ApplicationsReader(names, fields, prices, problems).read(folder);
    List<PastSeason> past = seasons.finished(problems, notes);
    List<Scouting> seen = List.of();
    if (ScoutingReader.TABLE.isThere(folder)) {
      Optional<List<WeedPressure>> known = weedsRead ? Optional.of(weeds) : Optional.empty();
      seen = new ScoutingReader(names, fields, known, dates, problems).read(folder);
    }
    Map<String, StationWeather> stations = weather.finished(problems, notes);
    weeds = WatchReader.read(folder, names, fields, weeds, problems, notes);
    if (yaml.metric()) {
      notes.add(BOOK + ": metric units are not printed yet; results stand in US units.");
    }
    problems.throwIfAny();
    return new Book(
        yaml.name(),
        yaml.season().orElseThrow(),
        catalog.get(),
        house,
        crops.orElseThrow(),
        yaml.passCost(),
        yaml.resprayExtra(),
        fields.fields(),
        weeds,
        journal,
        past,
        prices,
        stations,
        seen,
        notes);
  }

  private static BookYaml bookYaml(Path folder, Problems problems) {
    try {
      return BookYamlReader.read(BookFiles.yaml(folder, BOOK), problems);
    } catch (ProblemsException e) {
      problems.addAll(e.problems());
      return BookYaml.UNREADABLE;
    }
  }

  private Optional<Catalog> catalog(CatalogPlace place, Problems problems) {
    try {
      return Optional.of(
          place.folder().isPresent()
              ? catalogs.load(place.starter(), place.folder().get(), place.shown())
              : catalogs.load(place.starter(), Optional.empty()));
    } catch (ProblemsException e) {
      problems.addAll(e.problems());
      return Optional.empty();
    }
  }

  private static Prices prices(Path folder, Names names, Problems problems, List<String> notes) {
    if (PricesReader.TABLE.isThere(folder)) {
      return new PricesReader(names, problems).read(folder);
    }
    notes.add("prices.csv is missing: no product has a price.");
    return new Prices(Map.of());
  }

  private static List<PastSeason> pastSeasons(
      Path folder,
      Names names,
      FieldList fields,
      SeasonDates dates,
      Problems problems,
      List<String> notes) {
    if (SeasonsReader.TABLE.isThere(folder)) {
      return new SeasonsReader(names, fields, dates, problems).read(folder);
    }
    notes.add("seasons.csv is missing: what grew in past seasons is not known.");
    return List.of();
  }

  private static List<Field> ofAsked(List<Field> fields, Predicate<Field> asked) {
    List<Field> out = fields.stream().filter(asked).toList();
    return out.isEmpty() ? fields : out;
  }
}
