package org.swathbook.check;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.IngredientId;
import org.swathbook.growth.Anchors;
import org.swathbook.growth.TraceSet;
import org.swathbook.ledger.OneApplication;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Anchor;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.rules.Say;

/**
 * What the journal has sprayed on a field this season up to a day: facts that every program stands
 * on.
 *
 * @param made passes by date, each on its very day
 * @param notes what of the journal is taken how, one sentence each
 */
public record SeasonSoFar(List<Pass> made, List<String> notes) {
  /**
   * A pass planned so many days before or after the day it was made is that pass: default, ours.
   */
  private static final int SAME_PASS_DAYS = 21;

  /** A pass that is so many days late is still to come, as soon as may be: default, ours. */
  public static final int LATE_DAYS = 14;

  /** A pass on less than this share of the field is told: default, ours. */
  private static final double WHOLE_FIELD = 0.95;

  public SeasonSoFar {
    made = List.copyOf(made);
    notes = List.copyOf(notes);
  }

  private record Tank(LocalDate date, String id) {}

  /**
   * What became of a written program.
   *
   * @param program the passes made, then what of it is still to come
   * @param origins for each of its passes the place of the written one; -1 for a pass that the
   *     program did not have
   * @param notes what became of its passes, one sentence each
   */
  public record Standing(Program program, List<Integer> origins, List<String> notes) {

    public Standing {
      origins = List.copyOf(origins);
      notes = List.copyOf(notes);
    }
  }

  /** The journal of the book's season up to and with a day. */
  public static SeasonSoFar of(Book book, Field field, LocalDate today) {
    Map<Tank, List<Application>> tanks = new LinkedHashMap<>();
    List<String> notes = new ArrayList<>();
    for (Application a : book.journal().of(field.id())) {
      if (a.season() == book.season() && !a.date().isAfter(today)) {
        tanks.computeIfAbsent(new Tank(a.date(), a.pass()), t -> new ArrayList<>()).add(a);
      }
    }
    List<Pass> made = new ArrayList<>();
    tanks.forEach(
        (tank, rows) -> {
          if (isInSeason(book, tank.date())) {
            made.add(
                new Pass(
                    new Anchor.Made(tank.date()),
                    Mix.of(rows.stream().map(Application::dose).toList())));
            ofAPart(field, tank, rows).ifPresent(notes::add);
          } else {
            notes.add(
                "The pass of "
                    + Say.date(tank.date())
                    + " lies outside the days of the season that are walked; it counts in sums and"
                    + " intervals only.");
          }
        });
    return new SeasonSoFar(made, notes);
  }

  private static boolean isInSeason(Book book, LocalDate date) {
    return !date.isBefore(LocalDate.of(book.season() - 1, 9, 1))
        && !date.isAfter(LocalDate.of(book.season(), 10, 31));
  }

  private static Optional<String> ofAPart(Field field, Tank tank, List<Application> rows) {
    return rows.stream()
        .filter(a -> a.acres().orElse(field.acres()) < WHOLE_FIELD * field.acres())
        .findFirst()
        .map(
            a ->
                "The pass of "
                    + Say.date(tank.date())
                    + " went on a part of the field only; it is taken as made on all of it.");
  }

  public boolean isEmpty() {
    return made.isEmpty();
  }

  /** The date of a pass that is made. */
  public static LocalDate dateOf(Pass made) {
    return ((Anchor.Made) made.at()).date();
  }

  /**
   * Whether a dose on a day would still be one application with what was just made, so that it
   * would be taken for that.
   */
  public boolean isSameApplication(Dose dose, LocalDate date) {
    return made.stream()
        .filter(
            p -> Math.abs(ChronoUnit.DAYS.between(dateOf(p), date)) <= OneApplication.DAYS_OF_ONE)
        .flatMap(p -> p.mix().doses().stream())
        .anyMatch(d -> d.product().id().equals(dose.product().id()));
  }

  /**
   * A written program as it stands on a day: each pass made takes the place of the written one that
   * shares most actives with it and was planned within three weeks of it. Of what is left, a pass
   * that is up to two weeks late comes today, and one that is later is left out. A program of a
   * season in which the journal has nothing stays as written.
   *
   * @throws IllegalArgumentException in words, when an anchor does not come in the field's years
   */
  public Standing standing(Book book, TraceSet traces, Program written, LocalDate today) {
    int n = written.passes().size();
    List<LocalDate> planned = new ArrayList<>();
    for (Pass p : written.passes()) {
      planned.add(Anchors.resolve(p.at(), traces, book.house().sizePercentile()));
    }
    List<Pass> passes = new ArrayList<>();
    List<Integer> origins = new ArrayList<>();
    List<String> said = new ArrayList<>();
    Set<Integer> left = new LinkedHashSet<>();
    for (int i = 0; i < n; i++) {
      left.add(i);
    }
    for (Pass m : made) {
      Optional<Integer> same =
          left.stream()
              .filter(i -> shared(m, written.passes().get(i)) > 0)
              .filter(i -> daysApart(m, planned.get(i)) <= SAME_PASS_DAYS)
              .min(
                  Comparator.<Integer>comparingInt(i -> -shared(m, written.passes().get(i)))
                      .thenComparingLong(i -> daysApart(m, planned.get(i))));
      passes.add(m);
      origins.add(same.orElse(-1));
      same.ifPresent(left::remove);
    }
    for (int i : left) {
      Pass p = written.passes().get(i);
      LocalDate date = planned.get(i);
      if (made.isEmpty() || !date.isBefore(today)) {
        passes.add(p);
        origins.add(i);
      } else if (!date.plusDays(LATE_DAYS).isBefore(today)) {
        passes.add(new Pass(new Anchor.OnDate(today), p.mix()));
        origins.add(i);
        said.add(
            "The pass of "
                + Say.date(date)
                + " is not in the journal; it is late and taken to come on "
                + Say.date(today)
                + ".");
      } else {
        said.add(
            "The pass of "
                + Say.date(date)
                + " is not in the journal and more than "
                + LATE_DAYS
                + " days late; it is left out.");
      }
    }
    return new Standing(written.with(passes), origins, said);
  }

  private static long daysApart(Pass made, LocalDate planned) {
    return Math.abs(ChronoUnit.DAYS.between(dateOf(made), planned));
  }

  private static int shared(Pass a, Pass b) {
    Set<IngredientId> of = new LinkedHashSet<>();
    for (ActiveDose d : a.mix().actives()) {
      of.add(d.ingredient().id());
    }
    return (int)
        b.mix().actives().stream()
            .map(d -> d.ingredient().id())
            .distinct()
            .filter(of::contains)
            .count();
  }
}
