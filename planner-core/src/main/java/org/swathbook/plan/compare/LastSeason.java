package org.swathbook.plan.compare;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.PastSeason;
import org.swathbook.catalog.CropId;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.choice.FilledMix;
import org.swathbook.program.Anchor;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.rules.Say;

/**
 * What the journal sprayed on a field in an earlier season, moved to this one by days from
 * planting. The last season in this year's crop goes first, else the last of any crop.
 *
 * @param notes how the program was made of the journal, one sentence each
 */
public record LastSeason(int season, Program program, List<String> notes) {
  /** A pass on less than this share of the field is told: default, ours. */
  private static final double WHOLE_FIELD = 0.95;

  public LastSeason {
    notes = List.copyOf(notes);
  }

  /** Why there is none, in words; empty when {@link #of} makes one. */
  public static Optional<String> missing(Book book, Field field) {
    Optional<Integer> season = find(book, field);
    if (season.isEmpty()) {
      return Optional.of(
          "applications.csv has no pass on " + field.id() + " in a season before " + book.season());
    }
    if (planted(book, field, season.get()).isEmpty()) {
      return Optional.of(
          "seasons.csv does not say when "
              + field.id()
              + " was planted in "
              + season.get()
              + ", so its passes cannot be moved to this season; fill plantDate");
    }
    return Optional.empty();
  }

  /**
   * The program of that season, which must not be {@link #missing}.
   *
   * @throws IllegalArgumentException when it is
   */
  public static LastSeason of(Book book, TraceSet traces) {
    Field field = traces.field();
    missing(book, field)
        .ifPresent(
            why -> {
              throw new IllegalArgumentException(why);
            });
    int season = find(book, field).orElseThrow();
    LocalDate planted = planted(book, field, season).orElseThrow();
    return new Maker(book, traces, season, planted).made();
  }

  private static Optional<Integer> find(Book book, Field field) {
    TreeSet<Integer> all = new TreeSet<>(Comparator.reverseOrder());
    book.journal().of(field.id()).stream()
        .map(Application::season)
        .filter(s -> s < book.season())
        .forEach(all::add);
    return all.stream()
        .filter(s -> crop(book, field, s).filter(field.crop()::equals).isPresent())
        .findFirst()
        .or(() -> all.stream().findFirst());
  }

  private static Optional<PastSeason> past(Book book, Field field, int season) {
    return book.pastSeasons().stream()
        .filter(p -> p.field().equals(field.id()) && p.season() == season)
        .findFirst();
  }

  private static Optional<LocalDate> planted(Book book, Field field, int season) {
    return past(book, field, season).flatMap(PastSeason::plantDate);
  }

  /** From seasons.csv, else as the journal has it. */
  private static Optional<CropId> crop(Book book, Field field, int season) {
    return past(book, field, season)
        .map(PastSeason::crop)
        .or(
            () ->
                book.journal().of(field.id()).stream()
                    .filter(a -> a.season() == season && !a.crop().isBlank())
                    .map(a -> CropId.of(a.crop()))
                    .findFirst());
  }

  /** Turns the rows of a season into passes of this one. */
  private static final class Maker {
    private final Book book;
    private final TraceSet traces;
    private final Field field;
    private final int season;
    private final LocalDate planted;
    private final List<Pass> passes = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    private record Tank(LocalDate date, String id) {}

    Maker(Book book, TraceSet traces, int season, LocalDate planted) {
      this.book = book;
      this.traces = traces;
      this.field = traces.field();
      this.season = season;
      this.planted = planted;
    }

    LastSeason made() {
      notes.add(
          "As sprayed in "
              + season
              + " in "
              + crop(book, field, season).map(this::cropName).orElse("a crop that is not known")
              + " planted "
              + Say.date(planted)
              + ", each pass as many days from planting, in every year, even where a label or the"
              + " weather would be against it: what rules say of it stands beside it.");
      tanks().forEach(this::add);
      notes.add(
          "The journal names neither adjuvants nor spray volumes: those that the labels ask for are"
              + " taken.");
      return new LastSeason(
          season, new Program("As sprayed in " + season, field.id(), passes), notes);
    }

    private String cropName(CropId id) {
      return book.catalog().findCrop(id.value()).map(c -> c.name()).orElse(id.value());
    }

    private Map<Tank, List<Application>> tanks() {
      Map<Tank, List<Application>> out = new LinkedHashMap<>();
      for (Application a : book.journal().of(field.id())) {
        if (a.season() == season) {
          out.computeIfAbsent(new Tank(a.date(), a.pass()), t -> new ArrayList<>()).add(a);
        }
      }
      return out;
    }

    private void add(Tank tank, List<Application> rows) {
      int days = (int) ChronoUnit.DAYS.between(planted, tank.date());
      LocalDate date = field.plantDate().plusDays(days);
      if (date.isBefore(LocalDate.of(book.season() - 1, 9, 1))
          || date.isAfter(LocalDate.of(book.season(), 10, 31))) {
        notes.add(
            "Left out: the pass of "
                + Say.date(tank.date())
                + ", which would lie outside this season.");
        return;
      }
      rows.stream()
          .filter(a -> a.acres().orElse(field.acres()) < WHOLE_FIELD * field.acres())
          .findFirst()
          .ifPresent(
              a ->
                  notes.add(
                      "The pass of "
                          + Say.date(tank.date())
                          + " went on a part of the field only; here it goes on all of it."));
      List<Dose> doses = rows.stream().map(Application::dose).toList();
      passes.add(
          new Pass(
              new Anchor.FromPlanting(days),
              FilledMix.of(book, traces, Timings.at(traces, date), Mix.of(doses))));
    }
  }
}
