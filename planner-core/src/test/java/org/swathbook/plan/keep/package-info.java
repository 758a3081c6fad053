/** Tests of a written program that is changed as little as possible. */
@NullMarked
package org.swathbook.plan.keep;

import org.jspecify.annotations.NullMarked;
