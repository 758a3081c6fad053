package org.swathbook.plan.climb;

/**
 * How a climb goes from program to program.
 *
 * @param walked neighbours walked in full at each step: of each way to change a program the best by
 *     net return and as many by the goal
 * @param worth a step that gains less than so many dollars per acre of the goal is the last one
 * @param onePassMoreAtOnce whether one more pass is tried at every step; else only where no change
 *     of the passes at hand is worth a step
 */
public record Steps(int walked, double worth, boolean onePassMoreAtOnce) {}
