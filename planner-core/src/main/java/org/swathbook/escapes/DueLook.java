package org.swathbook.escapes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.Scouting;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Ordered;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.FieldId;

/**
 * A pass of the journal that somebody should look at.
 *
 * @param actives names of those that work through leaves
 * @param from first day on which all of them can be judged
 * @param to last day on which a look still leaves time to act: three weeks after the pass, common
 *     practice, no source; not before {@code from}
 * @param scouted counts that {@code scouting.csv} has of the last day it was walked since {@code
 *     from}
 */
public record DueLook(
    Field field,
    LocalDate sprayed,
    Set<String> actives,
    LocalDate from,
    LocalDate to,
    When when,
    List<Scouting> scouted) {
  private static final int LAST_DAY = 21;

  /** Whether it is time. */
  public enum When {
    EARLY("not yet"),
    DUE("due"),
    LATE("late");

    private final String word;

    When(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  /** A pass at which somebody has looked. */
  public record Looked(FieldId field, LocalDate sprayed) {}

  /** For how long a late look is still asked for: default, ours. */
  private static final int FORGOTTEN_DAYS = 42;

  public DueLook {
    actives = Ordered.set(actives);
    scouted = List.copyOf(scouted);
  }

  /** Whether somebody counted there, late enough, and no row of that day has a plant. */
  private boolean isFoundClean() {
    return !scouted.isEmpty()
        && scouted.stream().allMatch(s -> s.count().orElseThrow().perM2() == 0);
  }

  private static List<Scouting> scouted(Book book, Field f, LocalDate from, LocalDate today) {
    List<Scouting> rows =
        book.scoutings().stream()
            .filter(s -> s.field().equals(f.id()) && s.count().isPresent())
            .filter(s -> !s.date().isBefore(from) && !s.date().isAfter(today))
            .toList();
    return rows.stream()
        .map(Scouting::date)
        .max(LocalDate::compareTo)
        .map(last -> rows.stream().filter(s -> s.date().equals(last)).toList())
        .orElse(List.of());
  }

  /** Passes of the season that can be or will be judged, by day of the look, then field. */
  public static List<DueLook> of(Book book, LocalDate today, Set<Looked> looked) {
    List<DueLook> out = new ArrayList<>();
    for (Field f : book.fields()) {
      Map<LocalDate, List<Ingredient>> passes = new TreeMap<>();
      for (Application a : book.journal().of(f.id())) {
        if (a.season() == book.season()
            && !a.date().isAfter(today)
            && !a.date().plusDays(FORGOTTEN_DAYS).isBefore(today)
            && !looked.contains(new Looked(f.id(), a.date()))) {
          a.dose().actives().stream()
              .map(ActiveDose::ingredient)
              .filter(Ingredient::hasFoliarActivity)
              .filter(
                  i ->
                      book.weedsOf(f.id()).stream()
                          .anyMatch(w -> Readings.works(book, i, w.weed().id())))
              .forEach(i -> passes.computeIfAbsent(a.date(), d -> new ArrayList<>()).add(i));
        }
      }
      passes.forEach(
          (date, actives) -> {
            DueLook look = of(book, f, date, actives, today);
            if (!look.isFoundClean()) {
              out.add(look);
            }
          });
    }
    out.sort(
        Comparator.comparing(DueLook::from)
            .thenComparing(d -> d.field().id().value())
            .thenComparing(DueLook::sprayed));
    return out;
  }

  private static DueLook of(
      Book book, Field f, LocalDate date, List<Ingredient> actives, LocalDate today) {
    int days =
        actives.stream().mapToInt(i -> SiteTimeline.of(i.site()).judgedFrom()).max().orElseThrow();
    LocalDate from = WarmDays.since(date, book, f).worth(days);
    LocalDate last = date.plusDays(LAST_DAY);
    LocalDate to = last.isBefore(from) ? from : last;
    When when = today.isBefore(from) ? When.EARLY : today.isAfter(to) ? When.LATE : When.DUE;
    Set<String> names = new TreeSet<>();
    actives.forEach(i -> names.add(i.name()));
    return new DueLook(f, date, names, from, to, when, scouted(book, f, from, today));
  }
}
