package org.swathbook.catalog;

/**
 * Shares of the seedbank that come up and that live through a year, seeds a full-season plant
 * sheds, selfing share.
 */
public record SeedBiology(
    double emerged, double survival, double fecundity, double selfing, Source source) {}
