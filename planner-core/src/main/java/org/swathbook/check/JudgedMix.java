package org.swathbook.check;

import org.swathbook.program.SprayJob;
import org.swathbook.rules.PassFacts;

/**
 * A job with what all rules say of it.
 *
 * @param facts crop, weeds and uses by which it was judged
 */
public record JudgedMix(SprayJob job, PassFacts facts, Judgement judgement) {}
