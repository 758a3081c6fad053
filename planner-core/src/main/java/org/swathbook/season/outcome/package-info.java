/**
 * What a season walked with one program came to: survivors, size at each pass, layers and gaps,
 * loss, sites of action. Facts only; they are made by the walk.
 */
@NullMarked
package org.swathbook.season.outcome;

import org.jspecify.annotations.NullMarked;
