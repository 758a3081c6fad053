/**
 * The files of a book: reading all of them into a {@link org.swathbook.book.Book}, with every
 * problem of form and meaning by file, line and column, and writing programs back.
 */
@NullMarked
package org.swathbook.book.file;

import org.jspecify.annotations.NullMarked;
