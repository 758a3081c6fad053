package org.swathbook.program;

import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.catalog.WeedId;

/**
 * One weed as seen after a pass. What is empty was not written down: unknown, not 'no'.
 *
 * @param sprayedAtCm height on the day of the pass
 * @param newGrowthCm length of new growth on the survivors
 * @param sameSpeciesDeadBeside whether dead plants of this weed stand beside survivors of its size
 * @param otherSpeciesControlled whether the other weeds that the mix controls are dead
 */
public record SeenWeed(
    WeedId weed,
    OptionalDouble sprayedAtCm,
    PlantCounts plants,
    OptionalDouble newGrowthCm,
    Optional<SurvivorPattern> pattern,
    Optional<Boolean> sameSpeciesDeadBeside,
    Optional<Boolean> otherSpeciesControlled) {}
