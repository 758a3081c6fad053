package org.swathbook.check;

import org.swathbook.program.SprayJob;

/**
 * One change of a job.
 *
 * @param words what it does: {@code raise glufosinate-2.34sl to 43 fl oz/acre}
 * @param drops whether something that was to work is left out
 */
record MixChange(String words, SprayJob job, boolean drops) {}
