/**
 * The outdoors of one field and weather year, computed once: crop stages, weed cohorts and heights,
 * canopy, soil. Nothing a sprayer does changes it.
 */
@NullMarked
package org.swathbook.growth;

import org.jspecify.annotations.NullMarked;
