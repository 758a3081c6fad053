/** Tests of what the journal says of the selection of weeds. */
@NullMarked
package org.swathbook.audit;

import org.jspecify.annotations.NullMarked;
