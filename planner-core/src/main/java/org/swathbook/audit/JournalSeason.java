package org.swathbook.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.PastSeason;
import org.swathbook.book.WeedPressure;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Numbers;
import org.swathbook.program.Anchor;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.rules.Say;

/** One field in one season of the journal: what was sprayed on it, and whether it can be walked. */
final class JournalSeason {
  /** A pass on less than this share of the field says nothing of the field: default, ours. */
  private static final double HALF_THE_FIELD = 0.5;

  /** A pass of the journal, by its day and its name. */
  record Tank(LocalDate date, String id) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Tank o && id.equals(o.id) && date.equals(o.date);
    }

    @Override
    public int hashCode() {
      return 31 * date.hashCode() + id.hashCode();
    }
  }

  private final Book past;
  private final List<WeedPressure> drivers;
  private final Field field;
  private final PastSeason row;
  private final Map<Tank, List<Application>> tanks = new LinkedHashMap<>();
  private final Map<Tank, List<Application>> all = new LinkedHashMap<>();
  private final List<String> notes = new ArrayList<>();
  private final List<String> unjudged = new ArrayList<>();
  private final List<String> notWalked = new ArrayList<>();

  /**
   * @param lean with the driver weeds alone, and without the journal before the season
   */
  private JournalSeason(Book book, Field today, PastSeason row, boolean lean) {
    this.field = PastBook.field(book, today, row);
    this.drivers = drivers(book.weedsOf(field.id()), row);
    this.past =
        lean ? PastBook.unsprayed(book, field, row, drivers) : PastBook.of(book, field, row);
    this.row = row;
    for (Application a : book.journal().of(field.id())) {
      if (a.season() == row.season()) {
        all.computeIfAbsent(new Tank(a.date(), a.pass()), t -> new ArrayList<>()).add(a);
      }
    }
    for (Map.Entry<Tank, List<Application>> tank : all.entrySet()) {
      take(tank.getKey(), tank.getValue());
    }
  }

  static JournalSeason of(Book book, Field today, PastSeason row) {
    return new JournalSeason(book, today, row, false);
  }

  /** The same with the driver weeds alone, and without the journal before the season. */
  static JournalSeason lean(Book book, Field today, PastSeason row) {
    return new JournalSeason(book, today, row, true);
  }

  /**
   * Driver weeds that the season's row names, or all where it names none.
   *
   * @param ofField weeds of the field
   */
  static List<WeedPressure> drivers(List<WeedPressure> ofField, PastSeason row) {
    List<WeedPressure> out = new ArrayList<>();
    for (WeedPressure w : ofField) {
      if (w.driver().isDriver() && (row.weeds().isEmpty() || row.weeds().contains(w.weed().id()))) {
        out.add(w);
      }
    }
    return List.copyOf(out);
  }

  private void take(Tank tank, List<Application> rows) {
    double acres = 0;
    for (Application a : rows) {
      acres = Math.max(acres, a.acres().orElse(field.acres()));
    }
    if (acres < HALF_THE_FIELD * field.acres()) {
      notes.add(
          "The pass of "
              + Say.date(tank.date())
              + " went on "
              + Numbers.grouped(acres, 1)
              + " of "
              + Numbers.grouped(field.acres(), 1)
              + " acres and is left out.");
    } else {
      tanks.put(tank, rows);
    }
  }

  /** The field alone in a book of the season. */
  Book past() {
    return past;
  }

  Field field() {
    return field;
  }

  int season() {
    return row.season();
  }

  List<WeedPressure> drivers() {
    return drivers;
  }

  /** Passes on half of the field or more, with their rows, in the order of the journal. */
  Map<Tank, List<Application>> tanks() {
    return tanks;
  }

  /** What is to be known of the sites of the season: passes left out, and why it is not walked. */
  List<String> notes() {
    return notes;
  }

  /** Why the season is not judged by rules; empty where it is. */
  List<String> unjudged() {
    return unjudged;
  }

  /** Why the season cannot be walked; empty where it can. */
  List<String> notWalked() {
    return notWalked;
  }

  /** All passes, those on a part of the field too. */
  List<JournalJudge.Made> made() {
    return made(all);
  }

  /** Passes on half of the field or more. */
  List<JournalJudge.Made> madeOnTheField() {
    return made(tanks);
  }

  private List<JournalJudge.Made> made(Map<Tank, List<Application>> of) {
    List<JournalJudge.Made> made = new ArrayList<>();
    for (Map.Entry<Tank, List<Application>> e : of.entrySet()) {
      Tank tank = e.getKey();
      List<Application> rows = e.getValue();
      if (isOfTheYear(tank.date())) {
        made.add(new JournalJudge.Made(tank.id(), tank.date(), mix(rows), rows.get(0).record()));
      }
    }
    return made;
  }

  private static Mix mix(List<Application> rows) {
    List<Dose> doses = new ArrayList<>(rows.size());
    for (Application a : rows) {
      doses.add(a.dose());
    }
    return Mix.of(doses);
  }

  private boolean isOfTheYear(LocalDate date) {
    return !date.isBefore(LocalDate.of(row.season() - 1, 9, 1))
        && !date.isAfter(LocalDate.of(row.season(), 10, 31));
  }

  /** The season's trace; empty where it cannot be walked, which is then noted. */
  Optional<TraceSet> trace(SharedTraces shared) {
    Optional<String> why = notWalkable(past, field, row, shared);
    why.ifPresent(this::notWalked);
    if (why.isPresent()) {
      return Optional.empty();
    }
    return Optional.of(shared.of(past, field));
  }

  /** Why a season cannot be walked; empty when it can. */
  private static Optional<String> notWalkable(
      Book book, Field field, PastSeason row, SharedTraces shared) {
    if (row.plantDate().isEmpty()) {
      return Optional.of("seasons.csv has no planting date");
    }
    return shared.has(book, field, row.plantDate().get(), row.season())
        ? Optional.empty()
        : Optional.of(
            "station "
                + field.station()
                + " has no full weather of that season, or it was planted outside it");
  }

  /** Why a season is not judged by rules; empty where it is. */
  static Optional<String> unjudged(Book book, Field field, PastSeason row, SharedTraces shared) {
    Optional<String> why = notWalkable(book, field, row, shared);
    return why.isPresent() ? Optional.of(unjudged(row, why.get())) : why;
  }

  private static String unjudged(PastSeason row, String why) {
    return row.season() + " is not judged by rules, for " + why + ".";
  }

  List<Pass> walkedPasses() {
    List<Pass> passes = new ArrayList<>();
    for (Map.Entry<Tank, List<Application>> e : tanks.entrySet()) {
      LocalDate date = e.getKey().date();
      if (isWalked(date)) {
        passes.add(new Pass(new Anchor.OnDate(date), mix(e.getValue())));
      }
    }
    return passes;
  }

  private void notWalked(String why) {
    notWalked.add(why);
    notes.add(
        "Not walked, for "
            + why
            + ": sites go by the response table, and what emergence met is not known.");
    unjudged.add(unjudged(row, why));
  }

  /** The walk ends at harvest, and begins with the weather year. */
  boolean isWalked(LocalDate date) {
    return !date.isBefore(LocalDate.of(row.season() - 1, 9, 1))
        && !date.isAfter(field.harvestDate().orElse(LocalDate.of(row.season(), 10, 31)));
  }
}
