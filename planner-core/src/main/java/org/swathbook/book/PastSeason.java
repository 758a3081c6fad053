package org.swathbook.book;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Trait;
import org.swathbook.program.FieldId;

/** What grew on a field in a past season. */
public record PastSeason(
    FieldId field,
    int season,
    CropId crop,
    Optional<Set<Trait>> traits,
    Optional<LocalDate> plantDate,
    Optional<LocalDate> harvestDate,
    Tillage tillage) {}
