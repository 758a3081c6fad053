@NullMarked
package org.swathbook.plan.bound;

import org.jspecify.annotations.NullMarked;
