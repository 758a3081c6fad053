/** Tests of the book's own arithmetic. */
@NullMarked
package org.swathbook.book;

import org.jspecify.annotations.NullMarked;
