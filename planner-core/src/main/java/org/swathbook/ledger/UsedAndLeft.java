package org.swathbook.ledger;

import java.util.List;
import org.swathbook.catalog.Cap;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;

/**
 * How much of a cap is used up on a day.
 *
 * @param used sum of what counts, lb/acre in the cap's basis
 * @param left what may still be sprayed; zero when nothing is left
 * @param counted what was added up, in order of date
 * @param notComparable entries of the period whose weight is in another basis than the cap's: they
 *     cannot be added, so the sum is too low by them
 */
public record UsedAndLeft(
    Cap cap, Rate used, Rate left, List<LedgerEntry> counted, List<LedgerEntry> notComparable) {

  public UsedAndLeft {
    counted = List.copyOf(counted);
    notComparable = List.copyOf(notComparable);
  }

  static UsedAndLeft of(Cap cap, List<LedgerEntry> inPeriod) {
    List<LedgerEntry> counted =
        inPeriod.stream().filter(e -> e.active().rate().basis() == cap.amount().basis()).toList();
    List<LedgerEntry> other =
        inPeriod.stream().filter(e -> e.active().rate().basis() != cap.amount().basis()).toList();
    double used = 0;
    for (LedgerEntry e : counted) {
      used += e.active().lbPerAcre();
    }
    double left = Math.max(0, cap.amount().lbPerAcre() - used);
    return new UsedAndLeft(
        cap,
        Rate.lbPerAcre(used, cap.amount().basis()),
        Rate.lbPerAcre(left, cap.amount().basis()),
        counted,
        other);
  }

  /** Above the cap by more than rounding; a sum exactly at the cap is legal. */
  public boolean exceeded() {
    return Quantity.exceeds(used.lbPerAcre(), cap.amount().lbPerAcre());
  }

  /** Used share of the cap: 1 is all of it. */
  public double share() {
    return used.lbPerAcre() / cap.amount().lbPerAcre();
  }

  /** Whether everything in the period could be added up. */
  public boolean isComplete() {
    return notComparable.isEmpty();
  }
}
