package org.swathbook.escapes;

import java.time.LocalDate;
import java.util.Optional;
import org.swathbook.measure.Money;
import org.swathbook.program.Dose;

/**
 * One product that may go on the survivors.
 *
 * @param failedSite its site was in the pass that failed
 * @param earliest first sensible and legal day
 * @param latest last day of the legal days that follow; the look ahead ends after eight weeks
 * @param controlPct of the survivors by the model, percent
 * @param costPerAcre product, pass and the extra of an unplanned pass
 * @param savesPerAcre yield loss that it spares, before its cost
 * @param published what published resprays gave; empty where none is known
 */
public record ResprayOption(
    Dose dose,
    boolean failedSite,
    LocalDate earliest,
    LocalDate latest,
    double controlPct,
    Money costPerAcre,
    Money savesPerAcre,
    Optional<String> published) {}
