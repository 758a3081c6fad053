package org.swathbook.testing;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.swathbook.book.Field;
import org.swathbook.book.NearWater;
import org.swathbook.book.Tillage;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.catalog.Trait;
import org.swathbook.program.FieldId;

/** A field step by step: no-till silt loam at sedge-fork in 30-inch rows unless told otherwise. */
public final class FieldBuilder {
  private final String id;
  private final CropId crop;
  private final LocalDate planted;
  private Optional<Set<Trait>> traits = Optional.of(Set.of());
  private double yieldGoal = 100;
  private OptionalDouble rowCm = OptionalDouble.of(76.2);
  private Optional<LocalDate> harvest = Optional.empty();
  private Tillage tillage = Tillage.NO_TILL;
  private List<SoilTexture> textures = List.of(SoilTexture.SILT_LOAM);
  private List<Double> organicMatter = List.of(2.5);
  private List<Double> ph = List.of(6.6);
  private String station = "sedge-fork";
  private OptionalDouble latitude = OptionalDouble.of(40.7);
  private OptionalDouble longitude = OptionalDouble.empty();
  private boolean irrigated;
  private double acres = 80;
  private Optional<String> state = Optional.of("NE");
  private List<CropId> nextCrops = List.of();
  private Optional<LocalDate> nextCropPlantDate = Optional.empty();
  private Set<Commodity> uses = Set.of(Commodity.GRAIN);
  private Optional<Boolean> erodible = Optional.empty();
  private OptionalDouble residuePct = OptionalDouble.empty();
  private OptionalDouble waterM = OptionalDouble.empty();
  private List<NearWater> waters = List.of();
  private List<String> neighbors = List.of();

  private FieldBuilder(String id, String crop, String planted) {
    this.id = id;
    this.crop = CropId.of(crop);
    this.planted = LocalDate.parse(planted);
  }

  public static FieldBuilder of(String id, String crop, String planted) {
    return new FieldBuilder(id, crop, planted);
  }

  public FieldBuilder traits(String... names) {
    Set<Trait> set = new LinkedHashSet<>();
    for (String n : names) {
      set.add(Trait.of(n));
    }
    traits = Optional.of(set);
    return this;
  }

  public FieldBuilder traitsUnknown() {
    traits = Optional.empty();
    return this;
  }

  public FieldBuilder acres(double of) {
    acres = of;
    return this;
  }

  public FieldBuilder yieldGoal(double bu) {
    yieldGoal = bu;
    return this;
  }

  public FieldBuilder rowInches(double inches) {
    rowCm = OptionalDouble.of(inches * 2.54);
    return this;
  }

  public FieldBuilder rowUnknown() {
    rowCm = OptionalDouble.empty();
    return this;
  }

  public FieldBuilder harvest(String date) {
    harvest = Optional.of(LocalDate.parse(date));
    return this;
  }

  public FieldBuilder tilled() {
    tillage = Tillage.TILLED;
    return this;
  }

  public FieldBuilder soil(SoilTexture texture, double organicMatterPct, double soilPh) {
    textures = List.of(texture);
    organicMatter = List.of(organicMatterPct);
    ph = List.of(soilPh);
    return this;
  }

  public FieldBuilder soilUnknown() {
    textures = List.of();
    organicMatter = List.of();
    ph = List.of();
    return this;
  }

  public FieldBuilder station(String name, double latitudeDegrees) {
    station = name;
    latitude = OptionalDouble.of(latitudeDegrees);
    return this;
  }

  /** Degrees, north and east positive. */
  public FieldBuilder place(double latitudeDegrees, double longitudeDegrees) {
    latitude = OptionalDouble.of(latitudeDegrees);
    longitude = OptionalDouble.of(longitudeDegrees);
    return this;
  }

  public FieldBuilder latitudeUnknown() {
    latitude = OptionalDouble.empty();
    return this;
  }

  public FieldBuilder irrigated() {
    irrigated = true;
    return this;
  }

  public FieldBuilder state(String code) {
    state = Optional.of(code);
    return this;
  }

  public FieldBuilder stateUnknown() {
    state = Optional.empty();
    return this;
  }

  /** A crop to follow, on a day that nobody has named. */
  public FieldBuilder nextUndated(String crop) {
    nextCrops = List.of(CropId.of(crop));
    return this;
  }

  public FieldBuilder next(String nextCrop, String nextPlantDate) {
    nextCrops = List.of(CropId.of(nextCrop));
    nextCropPlantDate = Optional.of(LocalDate.parse(nextPlantDate));
    return this;
  }

  public FieldBuilder uses(Commodity... takenOff) {
    uses = new LinkedHashSet<>(List.of(takenOff));
    return this;
  }

  /** {@code stream 90 ft}, {@code lake none}. */
  public FieldBuilder waters(String... kindsAndDistances) {
    waters = Arrays.stream(kindsAndDistances).map(NearWater::parse).toList();
    return this;
  }

  public FieldBuilder waterFeet(double feet) {
    waterM = OptionalDouble.of(feet * 0.3048);
    return this;
  }

  public FieldBuilder neighbors(String... each) {
    neighbors = List.of(each);
    return this;
  }

  /** The texture alone is known of the soil. */
  public FieldBuilder texture(SoilTexture texture) {
    soilUnknown();
    textures = List.of(texture);
    return this;
  }

  /** Highly erodible; how much residue covers it, nobody measured. */
  public FieldBuilder erodible() {
    erodible = Optional.of(true);
    residuePct = OptionalDouble.empty();
    return this;
  }

  public FieldBuilder erodible(double percentResidue) {
    erodible = Optional.of(true);
    residuePct = OptionalDouble.of(percentResidue);
    return this;
  }

  public Field build() {
    return new Field(
        new FieldId(id),
        "Invented Grower",
        id,
        acres,
        crop,
        traits,
        yieldGoal,
        rowCm,
        planted,
        harvest,
        tillage,
        textures,
        organicMatter,
        ph,
        residuePct,
        station,
        latitude,
        longitude,
        Optional.empty(),
        nextCrops,
        nextCropPlantDate,
        uses,
        irrigated,
        state,
        Optional.empty(),
        erodible,
        waterM,
        waters,
        neighbors);
  }
}
