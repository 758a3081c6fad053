/** Judging what lived through a pass, held against published cases. */
@NullMarked
package org.swathbook.escapes;

import org.jspecify.annotations.NullMarked;
