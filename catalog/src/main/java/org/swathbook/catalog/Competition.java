package org.swathbook.catalog;

/**
 * Cousens' hyperbola: loss per plant/m² as density nears zero and greatest loss, both as shares of
 * the yield.
 */
public record Competition(double lossPerPlant, double greatestLoss, Source source) {}
