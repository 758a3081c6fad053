/** Tests of programs side by side. */
@NullMarked
package org.swathbook.plan.compare;

import org.jspecify.annotations.NullMarked;
