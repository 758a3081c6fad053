package org.swathbook.plan.change;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.swathbook.program.Dose;
import org.swathbook.program.Program;

/**
 * One change to a program that stands.
 *
 * @param pass planned date of the pass that changes, as it was; of an added pass its own
 * @param movedTo only of a pass that is moved
 * @param in what goes into the tank
 * @param out what it takes the place of, or what is left out
 * @param program the whole program with the change
 */
public record SingleChange(
    Kind kind,
    LocalDate pass,
    Optional<LocalDate> movedTo,
    List<Dose> in,
    Optional<Dose> out,
    Program program) {

  /** What changes; the order is that of equals in a search. */
  public enum Kind {
    RAISE_RATE,
    LOWER_RATE,
    ADD_PRODUCT,
    EXCHANGE_PRODUCT,
    LEAVE_OUT_PRODUCT,
    MOVE_PASS,
    ADD_PASS,
    LEAVE_OUT_PASS;

    /** {@code raise-rate}. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  public SingleChange {
    in = List.copyOf(in);
  }

  /**
   * How many things it asks of those who buy and spray: a rate, a product or a day each count one,
   * an added pass its trip and each of its products; ours.
   */
  public int size() {
    return kind == Kind.ADD_PASS ? 1 + in.size() : 1;
  }

  /** What tells it from the other changes of the same program. */
  String key() {
    return kind
        + " "
        + pass
        + movedTo.map(d -> " to " + d).orElse("")
        + in.stream().map(SingleChange::dose).toList()
        + out.map(SingleChange::dose).orElse("");
  }

  private static String dose(Dose d) {
    return d.product().id() + " " + d.rate();
  }

  SingleChange with(Program other) {
    return new SingleChange(kind, pass, movedTo, in, out, other);
  }
}
