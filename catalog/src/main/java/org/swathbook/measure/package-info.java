/**
 * Quantities and rates with their units: parse, convert, compare, print. The only conversion
 * factors of the whole program live here; everything above speaks in these types and never
 * multiplies units by hand.
 */
@NullMarked
package org.swathbook.measure;

import org.jspecify.annotations.NullMarked;
