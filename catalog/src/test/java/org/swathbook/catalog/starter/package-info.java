/**
 * Holds the starter catalog against limits that others have published: at least as strict as each
 * of them, or with a written reason why not.
 */
@NullMarked
package org.swathbook.catalog.starter;

import org.jspecify.annotations.NullMarked;
