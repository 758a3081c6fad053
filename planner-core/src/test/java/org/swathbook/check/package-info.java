/** The judges: their laws over the demo book, and what they say of its fields and programs. */
@NullMarked
package org.swathbook.check;

import org.jspecify.annotations.NullMarked;
