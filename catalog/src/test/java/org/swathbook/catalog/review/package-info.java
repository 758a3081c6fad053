/** Reviewing a catalog: each check trips and stays silent, changes are said in words. */
@NullMarked
package org.swathbook.catalog.review;

import org.jspecify.annotations.NullMarked;
