package org.swathbook.book;

import java.time.LocalDate;
import java.util.OptionalDouble;
import org.swathbook.program.Dose;
import org.swathbook.program.FieldId;

/**
 * A row of the journal after corrections: one product on one field on one day.
 *
 * @param pass id that the rows of one pass share
 * @param season the season it was made for; a fall burndown belongs to the next season
 * @param epaRegNo registration number of the product as written; empty when nobody did
 * @param record what else was written down of the spraying
 * @param position the crop stage as written: {@code pre}, {@code V6}, {@code stubble}
 */
public record Application(
    String pass,
    String line,
    LocalDate date,
    FieldId field,
    int season,
    OptionalDouble acres,
    Dose dose,
    String epaRegNo,
    String crop,
    String position,
    SprayRecord record,
    String note) {}
