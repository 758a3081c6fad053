/**
 * Changes to a program that stands: one step each, made of the planner's own doses and days, walked
 * through all weather years and judged by every rule.
 */
@NullMarked
package org.swathbook.plan.change;

import org.jspecify.annotations.NullMarked;
