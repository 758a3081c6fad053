/** Tests of the exact searches: held against every program that can be made. */
@NullMarked
package org.swathbook.plan.exact;

import org.jspecify.annotations.NullMarked;
