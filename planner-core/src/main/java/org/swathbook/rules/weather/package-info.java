/** Rules on the weather, the water and the hour of a spraying, and on what lies downwind. */
@NullMarked
package org.swathbook.rules.weather;

import org.jspecify.annotations.NullMarked;
