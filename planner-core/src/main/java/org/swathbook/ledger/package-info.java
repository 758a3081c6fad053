/** What was used and what is left of caps, counts and intervals, per field and active. */
@NullMarked
package org.swathbook.ledger;

import org.jspecify.annotations.NullMarked;
