/**
 * What breaks when a season goes wrong, by how much, and what then helps: a program is walked again
 * in a changed situation (another weather, a late sprayer, late planting, a product that cannot be
 * had, one more resistance), held against the plain walk, and single legal changes are sought among
 * the planner's own doses and dates.
 */
@NullMarked
package org.swathbook.stress;

import org.jspecify.annotations.NullMarked;
