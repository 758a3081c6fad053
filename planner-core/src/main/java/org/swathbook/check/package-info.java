/**
 * Judging: the uses of a pass, the sequence of passes on a field, a whole program with its season,
 * and what a field's past forbids whatever is sprayed.
 */
@NullMarked
package org.swathbook.check;

import org.jspecify.annotations.NullMarked;
