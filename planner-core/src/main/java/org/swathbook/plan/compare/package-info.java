/**
 * Given programs of one field side by side, among them what the journal sprayed in an earlier
 * season.
 */
@NullMarked
package org.swathbook.plan.compare;

import org.jspecify.annotations.NullMarked;
