/**
 * A bound on every program of a field: of any doses that the planner may choose, in any tanks, on
 * any of its days. It lets programs be sprayed in parts, which makes the search for the best one
 * convex; so the bound is proved, and far from sharp.
 */
@NullMarked
package org.swathbook.plan.bound;

import org.jspecify.annotations.NullMarked;
