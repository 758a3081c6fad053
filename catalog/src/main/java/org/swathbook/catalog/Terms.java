package org.swathbook.catalog;

/**
 * What a label asks of any spraying with an active, whatever the crop; a use may have its own.
 *
 * @param foliar activity through leaves and the rain-free time that it needs
 * @param carrierMinGalPerAcre least spray volume
 * @param carrierAdvisedGalPerAcre least spray volume that the label advises and does not insist on
 * @param carrierMaxGalPerAcre highest spray volume
 * @param waterPh pH of the water in which the active keeps until it is sprayed
 * @param fertilizerRefusedOverCrop true when liquid fertilizer may not be the carrier over an
 *     emerged crop
 * @param training course that the label asks of whoever applies it, beside any certificate
 * @param setbacks least distances from water
 */
public record Terms(
    Stated<Foliar> foliar,
    Stated<Double> carrierMinGalPerAcre,
    Stated<Double> carrierAdvisedGalPerAcre,
    Stated<Double> carrierMaxGalPerAcre,
    Stated<Limit> waterPh,
    Stated<Boolean> fertilizerRefusedOverCrop,
    Stated<Double> reentryHours,
    Stated<Boolean> restrictedUse,
    Stated<String> training,
    TankTerms tank,
    DayTerms day,
    Stated<Setbacks> setbacks) {}
