/** Tests of the reading and writing of a book's files. */
@NullMarked
package org.swathbook.book.file;

import org.jspecify.annotations.NullMarked;
