package org.swathbook.plan.draft;

/**
 * A house rule that is missed for sure.
 *
 * @param rule its name
 * @param deficit by how much, as {@link HouseDeficit} counts it, and never more than a walk says
 */
public record Missed(String rule, double deficit) {}
