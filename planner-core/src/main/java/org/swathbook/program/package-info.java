/**
 * What a sprayer is asked to do: mixes, passes anchored to a point in time, the program of a field
 * in a season, and the observations made after a pass. Plain immutable values that know no field,
 * no weather and no rule.
 */
@NullMarked
package org.swathbook.program;

import org.jspecify.annotations.NullMarked;
