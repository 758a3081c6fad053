package org.swathbook.catalog;

import java.util.OptionalDouble;

/**
 * Tallest weeds that a label allows or advises, in cm; empty for a kind that the label does not
 * limit.
 */
public record WeedHeights(OptionalDouble broadleafCm, OptionalDouble grassCm) {}
