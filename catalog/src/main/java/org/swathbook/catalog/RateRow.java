package org.swathbook.catalog;

import java.util.Optional;
import org.swathbook.measure.RateRange;

/**
 * A row of a use's rates: on such soil this range, or refused when the range is empty. First match
 * wins.
 */
public record RateRow(SoilCondition when, Optional<RateRange> rates) {}
