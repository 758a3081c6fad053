/**
 * Exact searches over all programs that can be made of some passes: the best one, or the front of
 * cost, loss and control. What the first passes settle and what later ones can bring at most lets
 * them leave programs out unseen; nothing of that changes what they find.
 */
@NullMarked
package org.swathbook.plan.exact;

import org.jspecify.annotations.NullMarked;
