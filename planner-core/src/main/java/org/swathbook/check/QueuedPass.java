package org.swathbook.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.swathbook.program.Mix;
import org.swathbook.rules.Finding;
import org.swathbook.season.outcome.PassWeed;

/**
 * A pass of a program, and how it stands on a day.
 *
 * @param pass its place in the written program, from 1; 0 for one that was made and not planned
 * @param date day it was made on, or is planned for
 * @param cropStage stage of the crop today in the median year; empty where it is not looked at
 * @param weeds as they stand today, sprayed by what is made; empty where it is not looked at
 * @param lastDay last day before something new stands against it; empty when nothing does within
 *     {@link PassQueue#DAYS_AHEAD} days
 * @param opens first day on which nothing blocks it, when today something does
 * @param why what stands against it: from the day after {@code lastDay}, or today
 * @param warned what warns of it when it is sprayed today
 * @param sprayDays days fit to spray from today to the last day, or within the days looked at; mean
 *     of the weather years
 */
public record QueuedPass(
    int pass,
    State state,
    LocalDate date,
    Mix mix,
    String cropStage,
    List<PassWeed> weeds,
    Optional<LocalDate> lastDay,
    Optional<LocalDate> opens,
    List<Finding> why,
    List<Finding> warned,
    double sprayDays) {

  /** How a pass stands; the order is that in which a sprayer should see to them. */
  public enum State {
    /** May be made, and something new stands against it within a week. */
    CLOSES("closes this week"),
    /** Planned for today or earlier, may be made, and keeps for a week. */
    DUE("due"),
    /** Planned within the days looked at, and nothing blocks it today. */
    OPEN("open"),
    /** Planned by now or soon; a rule blocks it today. */
    BLOCKED("blocked today"),
    /** The journal does not have it, and it is too late to count on. */
    MISSED("missed"),
    /** Planned for later than the days looked at. */
    LATER("later"),
    /** The journal has it. */
    MADE("made");

    private final String word;

    State(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  public QueuedPass {
    weeds = List.copyOf(weeds);
    why = List.copyOf(why);
    warned = List.copyOf(warned);
  }
}
