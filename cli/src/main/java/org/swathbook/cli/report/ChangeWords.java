package org.swathbook.cli.report;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.swathbook.measure.Numbers;
import org.swathbook.plan.change.SingleChange;
import org.swathbook.program.Dose;

/** A change to a program in words. */
public final class ChangeWords {
  private ChangeWords() {}

  /**
   * {@code add fomesafen-2sl 1 pt/acre to the pass of 6 Jun}.
   *
   * @param day how the report writes a date
   */
  public static String of(SingleChange change, Function<LocalDate, String> day) {
    String pass = "the pass of " + day.apply(change.pass());
    String in = doses(change.in());
    return switch (change.kind()) {
      case RAISE_RATE, LOWER_RATE ->
          (change.kind() == SingleChange.Kind.RAISE_RATE ? "raise " : "lower ")
              + toRate(change.in().get(0))
              + " in "
              + pass
              + change.out().map(d -> ", from " + rate(d)).orElse("");
      case ADD_PRODUCT -> "add " + in + " to " + pass;
      case EXCHANGE_PRODUCT ->
          in
              + " instead of "
              + change.out().map(d -> d.product().id().value()).orElse("")
              + " in "
              + pass;
      case LEAVE_OUT_PRODUCT ->
          "leave " + change.out().map(d -> d.product().id().value()).orElse("") + " out of " + pass;
      case MOVE_PASS -> "move " + pass + " to " + change.movedTo().map(day).orElse("another day");
      case LEAVE_OUT_PASS -> "leave out " + pass;
      case ADD_PASS -> "one more pass on " + day.apply(change.pass()) + ": " + in;
    };
  }

  private static String toRate(Dose d) {
    return d.product().id() + " to " + rate(d);
  }

  private static String doses(List<Dose> doses) {
    return doses.stream()
        .map(d -> d.product().id() + " " + rate(d))
        .collect(Collectors.joining(", "));
  }

  private static String rate(Dose d) {
    double amount = d.rate().amount();
    return Numbers.decimals(amount, amount < 1 ? 4 : 2) + " " + d.rate().unitText();
  }
}
