/** Small types of the catalog. */
@NullMarked
package org.swathbook.catalog;

import org.jspecify.annotations.NullMarked;
