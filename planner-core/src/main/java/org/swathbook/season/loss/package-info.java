/** The models of what weeds cost: yield lost to them, what those killed late have cost, seed. */
@NullMarked
package org.swathbook.season.loss;

import org.jspecify.annotations.NullMarked;
