package org.swathbook.audit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Field;
import org.swathbook.book.WeedPressure;
import org.swathbook.measure.Money;
import org.swathbook.program.Program;

/**
 * A program beside what the journal has of its season.
 *
 * @param field as it was in that season
 * @param passes in the order of their days
 * @param accounts what was promised, what the plan would have come to in that season's weather, and
 *     what was sprayed came to; those that cannot be walked are not among them
 * @param seen last counts of driver weeds after the last pass
 * @param notes what is to be known of it, one sentence each
 */
public record PlannedAndApplied(
    Field field,
    int season,
    Program program,
    List<PassMatch> passes,
    List<Account> accounts,
    List<Seen> seen,
    List<String> notes) {

  /** What an account is of. */
  public enum Kind {
    /** The program over the weather years before the season, as it was planned. */
    PROMISED("promised"),
    /** The program as planned, in the weather that came. */
    PLANNED("as planned, in its weather"),
    /** The passes of the journal on their days. */
    SPRAYED("as sprayed");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * What passes come to.
   *
   * @param years weather years behind it
   * @param cost at today's prices; empty when a product has none
   * @param net the same with the crop's price of today; empty when the book has none of that crop
   * @param weeds the driver weeds of the season
   */
  public record Account(
      Kind kind, int years, Optional<Money> cost, Optional<Money> net, List<Stand> weeds) {
    public Account {
      weeds = List.copyOf(weeds);
    }
  }

  /**
   * A weed at the end.
   *
   * @param survivorsPerAcre all that are alive at harvest
   */
  public record Stand(
      WeedPressure weed, double controlPct, double survivorsPerAcre, double metFewerThanTwoPct) {}

  /** A count in the field. */
  public record Seen(WeedPressure weed, LocalDate date, double perAcre) {}

  public PlannedAndApplied {
    passes = List.copyOf(passes);
    accounts = List.copyOf(accounts);
    seen = List.copyOf(seen);
    notes = List.copyOf(notes);
  }
}
