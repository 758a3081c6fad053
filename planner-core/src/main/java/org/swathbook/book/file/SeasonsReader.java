package org.swathbook.book.file;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.swathbook.book.PastSeason;
import org.swathbook.book.Tillage;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Ordered;
import org.swathbook.catalog.Trait;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.MeasureException;
import org.swathbook.program.FieldId;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvRow;
import org.swathbook.source.Problems;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/** Reads {@code seasons.csv}: what grew in years gone by. */
final class SeasonsReader {
  static final Table TABLE =
      new Table(
          "seasons.csv",
          CsvColumns.required("field", "season", "crop", "tillage")
              .andOptional("traits", "plantDate", "harvestDate", "yield", "weeds"));

  private static final int FIRST = 1950;
  private static final int LAST = 2200;

  private final SeasonDates dates;
  private final Problems problems;
  private final Column<FieldId> fields;
  private final Column<Integer> seasons = Column.of("season", this::past, "2026");
  private final Column<CropId> crops;
  private final Column<Set<Trait>> traits;
  private final Column<LocalDate> harvests = Column.of("harvestDate", Texts::date, "2026-10-09");
  private final Column<Tillage> tillages =
      Column.of("tillage", Names.word(FieldsReader.TILLAGES, "tillage"), "no-till");
  private final Column<Double> yields = Column.of("yield", Parsers::bushelsPerAcre, "205 bu/acre");
  private final Map<Integer, Column<LocalDate>> plantings = new HashMap<>();

  /** Of each field, counted from {@link #FIRST}. */
  private final Map<FieldId, BitSet> seen = new HashMap<>();

  private final TextParser<WeedId> seenWeeds;
  private final List<PastSeason> out = new ArrayList<>();

  SeasonsReader(Names names, FieldList fields, SeasonDates dates, Problems problems) {
    this.dates = dates;
    this.problems = problems;
    this.fields = Column.of("field", fields::parse, "ND-1");
    this.crops = Column.of("crop", names::anyCrop, "corn");
    // The seasons of a book share the few sets there are.
    this.seenWeeds = t -> names.weed(t).id();
    this.traits = Column.of("traits", t -> Ordered.set(names.traits(t)), "glyphosate");
  }

  List<PastSeason> read(Path book) {
    TABLE.read(book, problems, this::row);
    return out;
  }

  private void row(CsvRow csv) {
    Row row = new Row(csv, problems);
    Optional<FieldId> field = row.need(fields);
    Optional<Integer> season = row.need(seasons);
    Optional<CropId> crop = row.need(crops);
    Optional<Set<Trait>> traited = row.find(traits);
    Optional<LocalDate> planted = row.find(plantings(season));
    Optional<LocalDate> harvest = row.find(harvests);
    Optional<Tillage> tillage = row.need(tillages);
    row.find(yields);
    List<WeedId> weeds = row.all("weeds", seenWeeds, "AMAPA;SETFA");
    if (planted.isPresent() && harvest.isPresent() && !harvest.get().isAfter(planted.get())) {
      row.problem(
          "harvestDate",
          "harvest on " + harvest.get() + " is not after planting on " + planted.get(),
          "write the later date here");
    }
    if (field.isPresent() && season.isPresent() && isSeen(field.get(), season.get())) {
      row.problem(
          "season",
          field.get() + " has a row for " + season.get() + " already",
          "keep one row for each field and season");
    }
    if (row.isSound()) {
      out.add(
          new PastSeason(
              field.orElseThrow(),
              season.orElseThrow(),
              crop.orElseThrow(),
              traited,
              planted,
              harvest,
              tillage.orElseThrow(),
              weeds));
    }
  }

  /** Whether a row above is of the same season of the field. */
  private boolean isSeen(FieldId field, int season) {
    BitSet its = seen.computeIfAbsent(field, f -> new BitSet());
    boolean is = its.get(season - FIRST);
    its.set(season - FIRST);
    return is;
  }

  private Column<LocalDate> plantings(Optional<Integer> season) {
    Column<LocalDate> known = plantings.get(season.orElse(0));
    if (known == null) {
      known = Column.of("plantDate", new SeasonDates(season)::inSeason, "2026-05-02");
      plantings.put(season.orElse(0), known);
    }
    return known;
  }

  private int past(String text) {
    int season = Parsers.whole(FIRST, LAST).parse(text);
    if (dates.season().isPresent() && season >= dates.season().get()) {
      throw new MeasureException(
          "'"
              + text
              + "' is not before the book's season "
              + dates.season().get()
              + "; write here only what grew in years gone by");
    }
    return season;
  }
}
