package org.swathbook.book;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Ordered;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.catalog.Trait;
import org.swathbook.program.FieldId;

/**
 * A field of the season. What a column does not say is empty: unknown, not 'no'.
 *
 * @param traits empty when unknown; an empty set is the statement 'none'
 * @param soilTextures every texture named for the field; the strictest governs
 * @param yieldGoalBuPerAcre weed-free yield, from the field or else the book's crop
 * @param uses what is taken off the field; empty when unknown
 * @param irrigated by pivot or furrow; false when none or not said
 * @param waters nearest water of each kind that is known; a kind that is missing is not known
 * @param neighbors each {@code WHAT DIRECTION DISTANCE}, as {@code vineyard NE 1500 ft}
 */
public record Field(
    FieldId id,
    String grower,
    String name,
    double acres,
    CropId crop,
    Optional<Set<Trait>> traits,
    double yieldGoalBuPerAcre,
    OptionalDouble rowSpacingCm,
    LocalDate plantDate,
    Optional<LocalDate> harvestDate,
    Tillage tillage,
    List<SoilTexture> soilTextures,
    List<Double> organicMatterPct,
    List<Double> soilPh,
    OptionalDouble residuePct,
    String station,
    OptionalDouble latitude,
    OptionalDouble longitude,
    Optional<CropId> previousCrop,
    List<CropId> nextCrops,
    Optional<LocalDate> nextCropPlantDate,
    Set<Commodity> uses,
    boolean irrigated,
    Optional<String> state,
    Optional<String> county,
    Optional<Boolean> erodible,
    OptionalDouble waterDistanceM,
    List<NearWater> waters,
    List<String> neighbors) {

  public Field {
    traits = traits.map(Ordered::set);
    soilTextures = List.copyOf(soilTextures);
    organicMatterPct = List.copyOf(organicMatterPct);
    soilPh = List.copyOf(soilPh);
    nextCrops = List.copyOf(nextCrops);
    uses = Ordered.set(uses);
    waters = List.copyOf(waters);
    neighbors = List.copyOf(neighbors);
  }

  /** The same field planted on another day; all else stays, the harvest date too. */
  public Field plantedOn(LocalDate date) {
    return new Field(
        id,
        grower,
        name,
        acres,
        crop,
        traits,
        yieldGoalBuPerAcre,
        rowSpacingCm,
        date,
        harvestDate,
        tillage,
        soilTextures,
        organicMatterPct,
        soilPh,
        residuePct,
        station,
        latitude,
        longitude,
        previousCrop,
        nextCrops,
        nextCropPlantDate,
        uses,
        irrigated,
        state,
        county,
        erodible,
        waterDistanceM,
        waters,
        neighbors);
  }
}
