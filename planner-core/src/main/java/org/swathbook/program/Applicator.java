package org.swathbook.program;

import java.util.List;
import java.util.Optional;

/**
 * Who is to spray.
 *
 * @param certNo number of the certificate; empty where none is named
 * @param trainings courses that labels ask for, by the word of the label ({@code dicamba}); empty
 *     where the job does not say
 */
public record Applicator(String name, String certNo, Optional<List<String>> trainings) {

  public Applicator {
    trainings = trainings.map(List::copyOf);
  }

  /** Of whom no training is stated. */
  public Applicator(String name, String certNo) {
    this(name, certNo, Optional.empty());
  }
}
