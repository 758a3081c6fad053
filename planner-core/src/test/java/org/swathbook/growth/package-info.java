/** Checks of the trace against published figures, an independent implementation and laws. */
@NullMarked
package org.swathbook.growth;

import org.jspecify.annotations.NullMarked;
