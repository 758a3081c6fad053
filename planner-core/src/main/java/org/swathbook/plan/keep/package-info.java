/** A written program with the fewest changes after which it serves. */
@NullMarked
package org.swathbook.plan.keep;

import org.jspecify.annotations.NullMarked;
