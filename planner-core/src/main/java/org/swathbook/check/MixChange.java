package org.swathbook.check;

import java.util.Optional;
import org.swathbook.catalog.ProductId;
import org.swathbook.program.SprayJob;

/**
 * One change of a job.
 *
 * @param words what it does: {@code raise glufosinate-2.34sl to 43 fl oz/acre}
 * @param product whose dose it changes, adds or leaves out; empty when it changes none
 * @param drops whether something that was to work is left out
 */
record MixChange(String words, SprayJob job, Optional<ProductId> product, boolean drops) {
  /** Of what is no product. */
  MixChange(String words, SprayJob job) {
    this(words, job, Optional.empty(), false);
  }
}
