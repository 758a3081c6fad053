package org.swathbook.plan;

import org.swathbook.check.Judgement;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * A program that the planner shows.
 *
 * @param name what it is best at, in words
 * @param recommended highest expected net return among those that break no house rule
 * @param givesUp what it gives up against the first program, in words; empty text for the first
 */
public record PlannedProgram(
    String name, boolean recommended, SeasonOutcome outcome, Judgement judgement, String givesUp) {}
