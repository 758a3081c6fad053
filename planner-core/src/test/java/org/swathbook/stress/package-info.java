/** Checks of the season that goes wrong: each case by hand, and laws. */
@NullMarked
package org.swathbook.stress;

import org.jspecify.annotations.NullMarked;
