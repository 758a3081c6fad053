/**
 * What was used and what is left of caps, counts and intervals, per field and active.
 *
 * <p>{@link org.swathbook.ledger.Ledger} joins a field's journal with planned applications and
 * answers: how much of a cap is used on a day and left ({@link org.swathbook.ledger.UsedAndLeft}),
 * how many applications a season has had ({@link org.swathbook.ledger.OneApplication}), when an
 * active was sprayed last, and what the months before a planting date brought. Caps, counts and
 * repeat intervals go by cap group (all forms of 2,4-D together); a form's own cap can be asked for
 * too. The day of an application is day 0 and day n is legal when n is at least the interval.
 * Months are calendar months: 14 July and 10 months are 14 May.
 */
@NullMarked
package org.swathbook.ledger;

import org.jspecify.annotations.NullMarked;
