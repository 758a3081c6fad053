package org.swathbook.plan;

import java.util.Map;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.Money;

/**
 * One house rule to loosen, and what it buys.
 *
 * @param from the threshold as it is and {@code to} the value at which a program would be
 *     recommended, in words
 * @param controlPct control of every weed with that program
 */
public record Relaxation(
    String rule, String from, String to, Money netPerAcre, Map<WeedId, Double> controlPct) {}
