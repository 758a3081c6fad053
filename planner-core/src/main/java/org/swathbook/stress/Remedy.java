package org.swathbook.stress;

import java.util.Optional;
import org.swathbook.measure.Money;
import org.swathbook.plan.change.JudgedChange;

/**
 * A change that helps once the trouble is known.
 *
 * @param netWithoutTrouble what the same change would add to the net return if the trouble did not
 *     come; empty where it would be no change of the plain program
 */
public record Remedy(JudgedChange change, Optional<Money> netWithoutTrouble) {}
