/** Tests of what tanks need. */
@NullMarked
package org.swathbook.tank;

import org.jspecify.annotations.NullMarked;
