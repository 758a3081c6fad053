/** Tests of drafts: what may be in one and whether its passes may follow each other. */
@NullMarked
package org.swathbook.plan.draft;

import org.jspecify.annotations.NullMarked;
