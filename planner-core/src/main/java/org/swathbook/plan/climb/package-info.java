/**
 * The heuristic search: starts as advisers think of them, single exchanges, and mending what falls
 * short. What it finds is never called the best.
 */
@NullMarked
package org.swathbook.plan.climb;

import org.jspecify.annotations.NullMarked;
