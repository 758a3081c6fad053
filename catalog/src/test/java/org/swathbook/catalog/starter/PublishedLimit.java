package org.swathbook.catalog.starter;

import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Method;
import org.swathbook.measure.Rate;

/**
 * One limit as somebody published it.
 *
 * @param key what the other tables call it
 * @param ingredients every one of these is held against it; each is one active, or all the actives
 *     of a premix or tank of which the strictest counts, as it does in the program
 * @param crops crops it speaks of; empty for any
 * @param position when it is sprayed, or {@code any}
 * @param kind which limit; {@code reading} when only people can compare it
 * @param of what the limit is of: the next crop, the harvest, the kind of weed; may be empty
 * @param value in the words of the catalog format; a range counts with its strict end
 * @param formulation the limit is of products of this formulation alone
 * @param method the limit is of sprayings made this way; empty for any way
 * @param rate the limit is of sprayings up to this rate, or of those above it
 * @param ground the limit is of this ground alone
 * @param states it holds in these states; empty for all
 */
record PublishedLimit(
    String key,
    List<List<String>> ingredients,
    List<String> crops,
    String position,
    String kind,
    List<String> of,
    String value,
    Optional<String> formulation,
    Optional<Method> method,
    Optional<RateBand> rate,
    Optional<Ground> ground,
    List<String> states,
    String source) {

  /** Sprayings up to a rate, or above it. */
  record RateBand(Rate at, boolean above) {

    /** Whether a row of the starter that ends at this rate still speaks of such sprayings. */
    boolean reaches(Rate upTo) {
      double top = upTo.lbPerAcre();
      return above ? top > at.lbPerAcre() : top >= at.lbPerAcre();
    }

    /** Whether a row of the starter that begins above this rate speaks of such sprayings. */
    boolean isAbove(Rate bottom) {
      return above ? at.lbPerAcre() >= bottom.lbPerAcre() : at.lbPerAcre() > bottom.lbPerAcre();
    }
  }

  /** Whether the field is erodible with little residue. */
  enum Ground {
    ERODIBLE,
    NOT_ERODIBLE
  }

  @Override
  public String toString() {
    return key
        + ": "
        + ingredients
        + " "
        + crops
        + " "
        + position
        + " "
        + kind
        + " "
        + of
        + " "
        + value
        + formulation.map(f -> " of " + f).orElse("")
        + method.map(m -> " by " + m.spelling()).orElse("")
        + rate.map(r -> (r.above() ? " above " : " up to ") + r.at()).orElse("")
        + " ("
        + source
        + ")";
  }
}
