package org.swathbook.book.file;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.book.PastSeason;
import org.swathbook.book.Tillage;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Trait;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.MeasureException;
import org.swathbook.program.FieldId;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvRow;
import org.swathbook.source.Problems;
import org.swathbook.source.Texts;

/** Reads {@code seasons.csv}: what grew in years gone by. */
final class SeasonsReader {
  static final Table TABLE =
      new Table(
          "seasons.csv",
          CsvColumns.required("field", "season", "crop", "tillage")
              .andOptional("traits", "plantDate", "harvestDate", "yield", "weeds"));

  private final Names names;
  private final FieldList fields;
  private final SeasonDates dates;
  private final Problems problems;
  private final Set<String> seen = new LinkedHashSet<>();
  private final List<PastSeason> out = new ArrayList<>();

  SeasonsReader(Names names, FieldList fields, SeasonDates dates, Problems problems) {
    this.names = names;
    this.fields = fields;
    this.dates = dates;
    this.problems = problems;
  }

  List<PastSeason> read(Path book) {
    TABLE.read(book, problems, this::row);
    return out;
  }

  private void row(CsvRow csv) {
    Row row = new Row(csv, problems);
    Optional<FieldId> field = row.need("field", fields::parse, "ND-1");
    Optional<Integer> season = row.need("season", this::past, "2026");
    Optional<CropId> crop = row.need("crop", names::anyCrop, "corn");
    Optional<Set<Trait>> traits = row.find("traits", names::traits, "glyphosate");
    SeasonDates own = new SeasonDates(season);
    Optional<LocalDate> planted = row.find("plantDate", own::inSeason, "2026-05-02");
    Optional<LocalDate> harvest = row.find("harvestDate", Texts::date, "2026-10-09");
    Optional<Tillage> tillage =
        row.need("tillage", Names.word(FieldsReader.TILLAGES, "tillage"), "no-till");
    row.find("yield", Parsers::bushelsPerAcre, "205 bu/acre");
    List<WeedId> weeds = row.all("weeds", t -> names.weed(t).id(), "AMAPA;SETFA");
    if (planted.isPresent() && harvest.isPresent() && !harvest.get().isAfter(planted.get())) {
      row.problem(
          "harvestDate",
          "harvest on " + harvest.get() + " is not after planting on " + planted.get(),
          "write the later date here");
    }
    if (field.isPresent() && season.isPresent() && !seen.add(field.get() + " " + season.get())) {
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
              traits,
              planted,
              harvest,
              tillage.orElseThrow(),
              weeds));
    }
  }

  private int past(String text) {
    int season = Parsers.whole(1950, 2200).parse(text);
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
