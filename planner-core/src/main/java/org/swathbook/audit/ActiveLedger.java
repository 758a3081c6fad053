package org.swathbook.audit;

import java.util.List;
import java.util.OptionalInt;
import org.swathbook.catalog.Ingredient;
import org.swathbook.ledger.UsedAndLeft;

/**
 * What one active has had on a field, and what is left of it.
 *
 * @param caps sums against every cap that holds on the field; empty when the catalog states none
 * @param made applications of the parent active this season
 * @param left applications that the labels still allow this season; empty when they name no number,
 *     or when that is not known
 * @param notKnown what the catalog does not say, so that a limit may hold that is not shown
 */
public record ActiveLedger(
    Ingredient ingredient,
    List<CapLine> caps,
    int made,
    OptionalInt left,
    OpenIntervals until,
    List<String> notKnown) {

  /**
   * A cap with its sum.
   *
   * @param counts the parent active whose forms are added up, or the one form
   * @param source of the cap
   */
  public record CapLine(String counts, UsedAndLeft sum, String source) {}

  public ActiveLedger {
    caps = List.copyOf(caps);
    notKnown = List.copyOf(notKnown);
  }
}
