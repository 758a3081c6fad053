/**
 * The adviser's book: fields, weeds, the journal of what was applied, prices and house rules. No
 * files here.
 */
@NullMarked
package org.swathbook.book;

import org.jspecify.annotations.NullMarked;
