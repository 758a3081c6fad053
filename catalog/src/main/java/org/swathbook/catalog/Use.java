package org.swathbook.catalog;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One labelled use of an active: a crop, where in its season, and every limit that goes with it.
 *
 * @param crop the crop; empty for a use before the emergence of any crop
 * @param formulations formulation codes that alone may be used ({@code CS}); empty for all
 * @param methods how alone it may be sprayed; empty for broadcast, and for any other way too
 * @param refused the label forbids this crop and position outright
 * @param traits all traits that the crop needs
 * @param cropHeightCm allowed crop heights
 * @param rates rows by soil, first match wins
 * @param weedRates least rates on weeds for which they differ from the range, first match wins
 * @param incorporationRefused true when the label forbids to work it into the soil in this use
 * @param caps most of the active itself in a period; several with sub-caps
 * @param applications most applications in a season
 * @param repeatDays least days between two applications
 * @param terms those of the ingredient with what this use replaces
 * @param harvest least days before a harvest, by what is harvested; a missing entry is unknown
 * @param condition what the label asks beside all this, in our own words, which no rule can hold
 *     against a field; empty when nothing is known to be
 * @param note a remark for the reader
 */
public record Use(
    Optional<CropId> crop,
    Set<Position> positions,
    Set<String> formulations,
    Set<Method> methods,
    boolean refused,
    Stated<Set<Trait>> traits,
    Stated<Window> timing,
    Stated<Limit> cropHeightCm,
    Stated<List<RateRow>> rates,
    Stated<List<WeedRate>> weedRates,
    Stated<Boolean> incorporationRefused,
    Stated<List<PlantingBand>> plantingInterval,
    Stated<Limit> soilPh,
    Stated<List<Cap>> caps,
    Stated<Integer> applications,
    Stated<Integer> repeatDays,
    Map<Commodity, Stated<HarvestLimit>> harvest,
    Stated<WeedHeights> weedHeights,
    Registration registration,
    Terms terms,
    String condition,
    String note) {

  public Use {
    positions = Ordered.set(positions);
    formulations = Ordered.set(formulations);
    methods = Ordered.set(methods);
    harvest = Ordered.map(harvest);
  }

  /** Interval before a harvest of this kind. */
  public Stated<HarvestLimit> harvestLimit(Commodity commodity) {
    Stated<HarvestLimit> s = harvest.get(commodity);
    return s != null
        ? s
        : Stated.unknown("days before " + commodity.name().toLowerCase(java.util.Locale.ROOT));
  }

  /** The row of its weed rates that speaks of plants of a weed at a height, if there is one. */
  public Optional<WeedRate> weedRate(WeedId weed, double heightCm) {
    return weedRates.find().stream()
        .flatMap(List::stream)
        .filter(r -> r.isFor(weed, heightCm))
        .findFirst();
  }

  /** Whether it may be sprayed this way. */
  public boolean isBy(Method method) {
    return methods.isEmpty() || methods.contains(method);
  }

  public boolean isFor(CropId wanted) {
    return crop.isEmpty() || crop.get().equals(wanted);
  }

  /** Whether it is meant for ripe crops only, to dry them and what grows in them. */
  public boolean isHarvestAid() {
    return positions.equals(Set.of(Position.HARVEST_AID));
  }

  public boolean isIn(Position.Phase phase) {
    return positions.stream().anyMatch(p -> p.phase() == phase);
  }
}
