/** Tests of the planner on copies of the demo book. */
@NullMarked
package org.swathbook.plan;

import org.jspecify.annotations.NullMarked;
