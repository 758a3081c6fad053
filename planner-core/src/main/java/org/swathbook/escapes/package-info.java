/**
 * Judging what lived through a pass: how far each weed is controlled, whether to look again, to
 * spray again or to stop the seed, and what speaks for and against resistance.
 */
@NullMarked
package org.swathbook.escapes;

import org.jspecify.annotations.NullMarked;
