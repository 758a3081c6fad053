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
import org.swathbook.catalog.Ordered;
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

  private final Optional<Map<CropId, CropEconomics>> economics;
  private final Problems problems;
  private final FieldList list = new FieldList();
  private final Column<Double> acres = Column.of("acres", Parsers::acres, "76.0");
  private final Column<Crop> crops;
  private final Column<Set<Trait>> traits;
  private final Column<Double> rowSpacings =
      Column.of("rowSpacing", above(Unit.CENTIMETRE, "15 in"), "15 in");
  private final Column<LocalDate> plantings;
  private final Column<LocalDate> harvests = Column.of("harvestDate", Texts::date, "2027-10-01");
  private final Column<LocalDate> nextPlantings =
      Column.of("nextCropPlantDate", Texts::date, "2028-04-26");
  private final Column<Tillage> tillages =
      Column.of("tillage", Names.word(TILLAGES, "tillage"), "no-till");
  private final Column<String> stations = Column.of("station", FieldsReader::station, "sedge-fork");
  private final Parts<SoilTexture> soilTextures =
      new Parts<>("soilTexture", FieldsReader::texture, "silt loam");
  private final Parts<Double> organicMatters =
      new Parts<>("organicMatterPct", Parsers.number(0, 100), "2.6");
  private final Parts<Double> soilPhs = new Parts<>("soilPh", Parsers.number(2, 12), "6.6");
  private final Column<Double> residues = Column.of("residuePct", Parsers.number(0, 100), "60");
  private final Column<Double> latitudes = Column.of("lat", Parsers.number(-90, 90), "40.72");
  private final Column<Double> longitudes = Column.of("lon", Parsers.number(-180, 180), "-98.61");
  private final Column<CropId> previousCrops;
  private final Parts<CropId> nextCrops;
  private final Parts<Commodity> uses = new Parts<>("use", Parsers::commodity, "grain");
  private final Column<Boolean> irrigations = Column.of("irrigation", Parsers::irrigation, "pivot");
  private final Column<String> states = Column.of("state", Parsers::state, "NE");
  private final Column<Boolean> erodibles = Column.of("erodible", Texts::yesNo, "no");
  private final Column<Double> waterDistances =
      Column.of("waterDistance", Texts.in(Unit.METRE, "800 ft"), "800 ft");
  private final Parts<NearWater> waters = new Parts<>("water", NearWater::parse, "stream 90 ft");
  private final Parts<String> neighbors =
      new Parts<>("neighbor", Parsers::neighbor, "vineyard NE 1500 ft");
  private final Column<Double> yieldGoals =
      Column.of("yieldGoal", Parsers::bushelsPerAcre, "62 bu/acre");

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
    this.economics = economics;
    this.problems = problems;
    this.crops = Column.of("crop", names::crop, "corn");
    this.traits = Column.of("traits", t -> Ordered.set(names.traits(t)), "glyphosate;glufosinate");
    this.plantings = Column.of("plantDate", dates::inSeason, "2027-05-11");
    this.previousCrops = Column.of("previousCrop", names::anyCrop, "corn");
    this.nextCrops = new Parts<>("nextCrop", names::anyCrop, "corn");
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
    Optional<Double> acres = row.need(this.acres);
    Optional<Crop> crop = row.need(crops);
    Optional<Set<Trait>> traited = row.find(traits);
    OptionalDouble rowCm = number(row, rowSpacings);
    Optional<LocalDate> planted = row.need(plantings);
    Optional<LocalDate> harvest = row.find(harvests);
    Optional<LocalDate> nextPlanted = row.find(nextPlantings);
    Optional<Tillage> tillage = row.need(tillages);
    Optional<String> station = row.need(stations);
    List<SoilTexture> textures = soilTextures.of(row);
    List<Double> organicMatter = organicMatters.of(row);
    List<Double> soilPh = soilPhs.of(row);
    OptionalDouble residue = number(row, residues);
    OptionalDouble lat = number(row, latitudes);
    OptionalDouble lon = number(row, longitudes);
    Optional<CropId> previous = row.find(previousCrops);
    List<CropId> next = nextCrops.of(row);
    List<Commodity> uses = this.uses.of(row);
    boolean irrigated = row.find(irrigations).orElse(false);
    Optional<String> state = row.find(states);
    Optional<Boolean> erodible = row.find(erodibles);
    OptionalDouble water = number(row, waterDistances);
    List<NearWater> waters = this.waters.of(row);
    List<String> neighbors = this.neighbors.of(row);
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
            traited,
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
    Optional<Double> own = row.find(yieldGoals);
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

  private static OptionalDouble number(Row row, Column<Double> column) {
    Optional<Double> found = row.find(column);
    return found.isPresent() ? OptionalDouble.of(found.get()) : OptionalDouble.empty();
  }
}
