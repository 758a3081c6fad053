/** Tests of changes to a program that stands. */
@NullMarked
package org.swathbook.plan.change;

import org.jspecify.annotations.NullMarked;
