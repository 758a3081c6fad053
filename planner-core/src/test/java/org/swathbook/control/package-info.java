/** Checks of what doses do, each naming the published figures that it is held against. */
@NullMarked
package org.swathbook.control;

import org.jspecify.annotations.NullMarked;
