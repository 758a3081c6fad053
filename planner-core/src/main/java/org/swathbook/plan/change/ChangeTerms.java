package org.swathbook.plan.change;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.swathbook.catalog.ProductId;
import org.swathbook.measure.Money;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.program.Dose;

/**
 * Within what bounds a program may change.
 *
 * @param from first planned date in the book's season of a pass that may still change
 * @param wishes what is asked of doses that are put in
 * @param kinds what may change
 * @param moveSteps most house steps by which a pass moves at once
 * @param extraForAddedPass what an added pass costs beside trip and products, an acre
 */
public record ChangeTerms(
    LocalDate from,
    PlanWishes wishes,
    Set<SingleChange.Kind> kinds,
    int moveSteps,
    Money extraForAddedPass) {

  /** Four house steps, twelve days as the house sets out: a pass that helps moves no farther. */
  private static final int HELPING_STEPS = 4;

  /** Three weeks of house steps: planting slips so far: default, ours. */
  private static final int KEEPING_STEPS = 7;

  public ChangeTerms {
    kinds = Set.copyOf(kinds);
  }

  /**
   * Changes that may help a program: nothing is taken from it without something in its place, but a
   * product that does harm.
   */
  public static ChangeTerms helping(
      LocalDate from, List<ProductId> unavailable, Money extraForAddedPass) {
    return new ChangeTerms(
        from,
        PlanWishes.NONE.withoutAll(unavailable),
        EnumSet.complementOf(
            EnumSet.of(SingleChange.Kind.LOWER_RATE, SingleChange.Kind.LEAVE_OUT_PASS)),
        HELPING_STEPS,
        extraForAddedPass);
  }

  /** Any change, so that a program meets what is asked of it. */
  public static ChangeTerms keeping(LocalDate from, PlanWishes wishes) {
    return new ChangeTerms(
        from, wishes, EnumSet.allOf(SingleChange.Kind.class), KEEPING_STEPS, Money.ZERO);
  }

  boolean allows(SingleChange.Kind kind) {
    return kinds.contains(kind);
  }

  boolean allows(Dose dose) {
    return wishes.allows(dose);
  }
}
