/**
 * Daily weather of a station and what follows from it alone: thermal time, soil temperature and
 * water, spray days.
 */
@NullMarked
package org.swathbook.weather;

import org.jspecify.annotations.NullMarked;
