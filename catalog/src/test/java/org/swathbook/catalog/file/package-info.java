/** The catalog files: every kind of problem, the overlay, the starter. */
@NullMarked
package org.swathbook.catalog.file;

import org.jspecify.annotations.NullMarked;
