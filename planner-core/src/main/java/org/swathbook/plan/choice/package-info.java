/**
 * What a plan chooses among: doses that the labels and the rules let onto a field on a day, the
 * days, and what is asked of a plan beside the house rules.
 */
@NullMarked
package org.swathbook.plan.choice;

import org.jspecify.annotations.NullMarked;
