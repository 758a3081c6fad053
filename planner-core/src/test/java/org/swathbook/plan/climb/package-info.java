/** Tests of the heuristic search. */
@NullMarked
package org.swathbook.plan.climb;

import org.jspecify.annotations.NullMarked;
