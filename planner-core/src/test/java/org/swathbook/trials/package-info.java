/**
 * Published field trials set up as fields and walked by the engine: what it predicts beside what
 * was seen. Reads tables of one form, {@code published/trial_results.csv}; treatments are read from
 * their words, so another table of the same columns can be walked as well.
 */
@NullMarked
package org.swathbook.trials;

import org.jspecify.annotations.NullMarked;
