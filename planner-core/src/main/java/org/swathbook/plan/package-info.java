/**
 * The best legal programs of a field: candidates by date from the rules, a search over programs,
 * named alternatives with what each gives up, and why when the house rules cannot be met.
 */
@NullMarked
package org.swathbook.plan;

import org.jspecify.annotations.NullMarked;
