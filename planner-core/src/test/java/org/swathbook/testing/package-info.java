/**
 * What the tests of this module share: a few crops, weeds, actives and fields built by hand, and
 * the demo weather as read from its files. Figures are those of the starter catalog where it has
 * them; none of them is a check of anything.
 */
@NullMarked
package org.swathbook.testing;

import org.jspecify.annotations.NullMarked;
