/** What the journal of a field says of labels and of how weeds are selected. */
@NullMarked
package org.swathbook.audit;

import org.jspecify.annotations.NullMarked;
