package org.swathbook.catalog;

/** Days from the last application to a harvest, or that this harvest is refused altogether. */
public record HarvestLimit(int days, boolean refused) {}
