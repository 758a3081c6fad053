/** Checks of the walked season: laws, published orderings, one number in all places. */
@NullMarked
package org.swathbook.season;

import org.jspecify.annotations.NullMarked;
