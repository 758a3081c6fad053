/** What readers make of good and of broken text. */
@NullMarked
package org.swathbook.source;

import org.jspecify.annotations.NullMarked;
