/** What a whole season leaves: holes between layers, weeds that are not covered, survivors. */
@NullMarked
package org.swathbook.rules.stewardship;

import org.jspecify.annotations.NullMarked;
