package org.swathbook.book;

/** Farm-gate price in dollars per bushel and the weed-free yield of a field that names none. */
public record CropEconomics(double dollarsPerBu, double yieldGoalBuPerAcre) {}
