package org.swathbook.book.file;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.swathbook.book.CropEconomics;
import org.swathbook.book.Field;
import org.swathbook.book.NearWater;
import org.swathbook.book.Tillage;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.catalog.Trait;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Unit;
import org.swathbook.program.FieldId;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvRow;
import org.swathbook.source.Problems;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/** Reads {@code fields.csv}. */
final class FieldsReader {
  static final Table TABLE =
      new Table(
          "fields.csv",
          CsvColumns.required("id", "acres", "crop", "plantDate", "tillage", "station")
              .andOptional(
                  "grower",
                  "name",
                  "traits",
                  "yieldGoal",
                  "rowSpacing",
                  "harvestDate",
                  "soilTexture",
                  "organicMatterPct",
                  "soilPh",
                  "residuePct",
                  "lat",
                  "lon",
                  "previousCrop",
                  "nextCrop",
                  "nextCropPlantDate",
                  "neighbor",
                  "use",
                  "irrigation",
                  "state",
                  "county",
                  "erodible",
                  "waterDistance",
                  "water"));

  static final SortedMap<String, Tillage> TILLAGES =
      new TreeMap<>(Map.of("no-till", Tillage.NO_TILL, "tilled", Tillage.TILLED));

  private final Names names;
  private final Optional<Map<CropId, CropEconomics>> economics;
  private final SeasonDates dates;
  private final Problems problems;
  private final FieldList list = new FieldList();

  /**
   * A reader of fields.
   *
   * @param economics prices and yields of the book's crops; empty when they could not be read
   */
  FieldsReader(
      Names names,
      Optional<Map<CropId, CropEconomics>> economics,
      SeasonDates dates,
      Problems problems) {
    this.names = names;
    this.economics = economics;
    this.dates = dates;
    this.problems = problems;
  }

  FieldList read(Path book) {
    int before = problems.count();
    int[] ofRows = {0};
    TABLE.read(
        book,
        problems,
        row -> {
          int beforeRow = problems.count();
          row(row);
          ofRows[0] += problems.count() - beforeRow;
        });
    if (problems.count() - before > ofRows[0]) {
      // Rows whose very form is wrong never came here, and nobody knows their ids.
      list.trustAnyId();
    }
    return list;
  }

  private void row(CsvRow csv) {
    Row row = new Row(csv, problems);
    Optional<FieldId> id = row.need("id", FieldsReader::id, "ND-1").flatMap(t -> unique(row, t));
    Optional<Double> acres = row.need("acres", Parsers::acres, "76.0");
    Optional<Crop> crop = row.need("crop", names::crop, "corn");
    Optional<Set<Trait>> traits = row.find("traits", names::traits, "glyphosate;glufosinate");
    OptionalDouble rowCm = number(row, "rowSpacing", above(Unit.CENTIMETRE, "15 in"), "15 in");
    Optional<LocalDate> planted = row.need("plantDate", dates::inSeason, "2027-05-11");
    Optional<LocalDate> harvest = row.find("harvestDate", Texts::date, "2027-10-01");
    Optional<LocalDate> nextPlanted = row.find("nextCropPlantDate", Texts::date, "2028-04-26");
    Optional<Tillage> tillage = row.need("tillage", Names.word(TILLAGES, "tillage"), "no-till");
    Optional<String> station = row.need("station", FieldsReader::station, "sedge-fork");
    List<SoilTexture> textures = row.all("soilTexture", FieldsReader::texture, "silt loam");
    List<Double> organicMatter = row.all("organicMatterPct", Parsers.number(0, 100), "2.6");
    List<Double> soilPh = row.all("soilPh", Parsers.number(2, 12), "6.6");
    OptionalDouble residue = number(row, "residuePct", Parsers.number(0, 100), "60");
    OptionalDouble lat = number(row, "lat", Parsers.number(-90, 90), "40.72");
    OptionalDouble lon = number(row, "lon", Parsers.number(-180, 180), "-98.61");
    Optional<CropId> previous = row.find("previousCrop", names::anyCrop, "corn");
    List<CropId> next = row.all("nextCrop", names::anyCrop, "corn");
    List<Commodity> uses = row.all("use", Parsers::commodity, "grain");
    boolean irrigated = row.find("irrigation", Parsers::irrigation, "pivot").orElse(false);
    Optional<String> state = row.find("state", Parsers::state, "NE");
    Optional<Boolean> erodible = row.find("erodible", Texts::yesNo, "no");
    OptionalDouble water = number(row, "waterDistance", Texts.in(Unit.METRE, "800 ft"), "800 ft");
    List<NearWater> waters = row.all("water", NearWater::parse, "stream 90 ft");
    List<String> neighbors = row.all("neighbor", Parsers::neighbor, "vineyard NE 1500 ft");
    Optional<Double> yieldGoal = yieldGoal(row, crop);
    checkOrder(row, planted, harvest, nextPlanted);
    if (!row.isSound() || yieldGoal.isEmpty()) {
      return;
    }
    list.put(
        new Field(
            id.orElseThrow(),
            row.text("grower"),
            row.isBlank("name") ? id.orElseThrow().value() : row.text("name"),
            acres.orElseThrow(),
            crop.orElseThrow().id(),
            traits,
            yieldGoal.orElseThrow(),
            rowCm,
            planted.orElseThrow(),
            harvest,
            tillage.orElseThrow(),
            textures,
            organicMatter,
            soilPh,
            residue,
            station.orElseThrow(),
            lat,
            lon,
            previous,
            next,
            nextPlanted,
            uses.isEmpty() ? Set.of() : EnumSet.copyOf(uses),
            irrigated,
            state,
            row.isBlank("county") ? Optional.empty() : Optional.of(row.text("county")),
            erodible,
            water,
            waters,
            neighbors));
  }

  private Optional<FieldId> unique(Row row, String text) {
    Optional<FieldId> id = list.add(text);
    if (id.isEmpty()) {
      row.problem(
          "id", "the field '" + text + "' stands here again", "give every field its own id");
    }
    return id;
  }

  /** The field's own yield, or else that of its crop in the book, which must have a price. */
  private Optional<Double> yieldGoal(Row row, Optional<Crop> crop) {
    Optional<Double> own = row.find("yieldGoal", Parsers::bushelsPerAcre, "62 bu/acre");
    if (crop.isEmpty() || economics.isEmpty()) {
      return own;
    }
    CropId id = crop.get().id();
    CropEconomics book = economics.get().get(id);
    if (book == null) {
      row.problem(
          "crop",
          "book.yaml has no price for " + id,
          "write it under crops, as '" + id + ": {price: 4.35 $/bu, yieldGoal: 205 bu/acre}'");
      return own;
    }
    return Optional.of(own.orElse(book.yieldGoalBuPerAcre()));
  }

  private void checkOrder(
      Row row,
      Optional<LocalDate> planted,
      Optional<LocalDate> harvest,
      Optional<LocalDate> nextPlanted) {
    if (planted.isEmpty()) {
      return;
    }
    if (harvest.isPresent() && !harvest.get().isAfter(planted.get())) {
      row.problem(
          "harvestDate",
          "harvest on " + harvest.get() + " is not after planting on " + planted.get(),
          "write the later date here");
    }
    if (nextPlanted.isPresent() && !nextPlanted.get().isAfter(planted.get())) {
      row.problem(
          "nextCropPlantDate",
          "the next crop is planted on "
              + nextPlanted.get()
              + ", not after this one on "
              + planted.get(),
          "write the later date here");
    }
  }

  private static String id(String text) {
    if (!BookPaths.isPlainName(text) || text.contains(" ")) {
      throw new MeasureException(
          "'" + text + "' cannot be an id; write letters, digits, dots and hyphens, as ND-1");
    }
    return text;
  }

  private static String station(String text) {
    if (!BookPaths.isPlainName(text)) {
      throw new MeasureException(
          "'"
              + text
              + "' cannot be a station; write the name of a file in the folder weather, as"
              + " sedge-fork");
    }
    return text;
  }

  private static SoilTexture texture(String text) {
    return SoilTexture.find(text)
        .orElseThrow(
            () ->
                Names.unknown(
                    text,
                    "soil texture",
                    Arrays.stream(SoilTexture.values()).map(SoilTexture::spelling).toList()));
  }

  private static TextParser<Double> above(Unit unit, String example) {
    return text -> {
      double value = Texts.in(unit, example).parse(text);
      if (!(value > 0)) {
        throw new MeasureException("'" + text + "' is not above zero; write as '" + example + "'");
      }
      return value;
    };
  }

  private static OptionalDouble number(
      Row row, String column, TextParser<Double> parser, String example) {
    Optional<Double> found = row.find(column, parser, example);
    return found.isPresent() ? OptionalDouble.of(found.get()) : OptionalDouble.empty();
  }
}
