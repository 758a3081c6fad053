/**
 * A program under construction, as every search of a plan sees it: passes of chosen doses on dates
 * of the grid, whether they may follow each other, what they are worth and what they break.
 */
@NullMarked
package org.swathbook.plan.draft;

import org.jspecify.annotations.NullMarked;
