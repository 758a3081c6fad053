/** Whether the partners of a tank carry each other: effective sites, resistant biotypes. */
@NullMarked
package org.swathbook.rules.mixture;

import org.jspecify.annotations.NullMarked;
