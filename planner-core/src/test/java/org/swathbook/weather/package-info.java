/** Checks of the weather models against published examples and against laws of their own. */
@NullMarked
package org.swathbook.weather;

import org.jspecify.annotations.NullMarked;
