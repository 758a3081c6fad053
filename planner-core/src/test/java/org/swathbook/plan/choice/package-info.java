/** Tests of what a plan chooses among. */
@NullMarked
package org.swathbook.plan.choice;

import org.jspecify.annotations.NullMarked;
