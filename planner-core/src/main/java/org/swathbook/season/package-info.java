/**
 * One program walked through every weather year: survivors, size at each pass, layers and gaps,
 * loss, dependence on a site.
 */
@NullMarked
package org.swathbook.season;

import org.jspecify.annotations.NullMarked;
