package org.swathbook.ledger;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Cap;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Ordered;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Product;
import org.swathbook.measure.Quantity;
import org.swathbook.program.ActiveDose;

/**
 * All that went and is planned to go on one field, active by active. The journal counts as if every
 * row had met the same ground, so the sums are those of the worst-treated part of the field.
 *
 * <p>Questions take the day on which they are asked and see that day's applications and all earlier
 * ones, never later ones: to judge a program, ask on the date of each pass.
 */
public final class Ledger {

  /** How far back next-crop intervals of the journal are read. */
  public static final int ROTATION_MONTHS = 40;

  private static final Set<Position> NOTHING_UP =
      Ordered.set(
          EnumSet.complementOf(EnumSet.of(Position.POST, Position.LAY_BY, Position.HARVEST_AID)));

  private final List<LedgerEntry> entries;
  private final double fieldAcres;

  private Ledger(List<LedgerEntry> entries, double fieldAcres) {
    List<LedgerEntry> sorted = new ArrayList<>(entries);
    sorted.sort(LedgerEntry::compare);
    this.entries = List.copyOf(sorted);
    this.fieldAcres = fieldAcres;
  }

  /** The journal of a field with planned applications, which count for the book's season. */
  public static Ledger of(Book book, Field field, List<PlannedApplication> planned) {
    return of(book.catalog(), field, book.season(), book.journal().of(field.id()), planned);
  }

  /** The same from its parts; applications on other fields are left out. */
  public static Ledger of(
      Catalog catalog,
      Field field,
      int season,
      List<Application> journal,
      List<PlannedApplication> planned) {
    Map<List<String>, Set<Position>> positions = new HashMap<>();
    List<LedgerEntry> entries = new ArrayList<>();
    for (Application a : journal) {
      if (a.field().equals(field.id())) {
        List<String> words = List.of(a.crop(), a.position());
        Set<Position> stage = positions.get(words);
        if (stage == null) {
          stage = Positions.find(catalog, a.crop(), a.position());
          positions.put(words, stage);
        }
        addRow(a, dated(a, field, season, stage), entries);
      }
    }
    return new Ledger(entries, field.acres()).with(season, field, planned);
  }

  /** All of this and planned applications of a season. */
  public Ledger with(int season, Field field, List<PlannedApplication> planned) {
    if (planned.isEmpty()) {
      return this;
    }
    List<LedgerEntry> all = new ArrayList<>(entries);
    for (PlannedApplication p : planned) {
      addPlanned(p, season, field, all);
    }
    return new Ledger(all, fieldAcres);
  }

  /**
   * A row of this crop that names no stage, made up to the day of planting, went over nothing that
   * was up: else it would count against the limits of what goes over the crop as well.
   */
  private static Set<Position> dated(Application a, Field field, int season, Set<Position> stage) {
    boolean early =
        stage.isEmpty()
            && a.season() == season
            && a.crop().equals(field.crop().value())
            && !a.date().isAfter(field.plantDate());
    return early ? NOTHING_UP : stage;
  }

  private static void addRow(Application a, Set<Position> positions, List<LedgerEntry> to) {
    Product product = a.dose().product();
    for (ActiveDose d : a.dose().actives()) {
      to.add(
          new LedgerEntry(a.date(), a.season(), d, product, positions, a.acres(), Optional.of(a)));
    }
  }

  private static void addPlanned(
      PlannedApplication p, int season, Field field, List<LedgerEntry> to) {
    Product product = p.dose().product();
    OptionalDouble acres = OptionalDouble.of(field.acres());
    for (ActiveDose d : p.dose().actives()) {
      to.add(new LedgerEntry(p.date(), season, d, product, p.positions(), acres, Optional.empty()));
    }
  }

  /** Everything, by date. */
  public List<LedgerEntry> entries() {
    return entries;
  }

  /** A group's sum against its cap on a day, for what was sprayed for a season. */
  public UsedAndLeft ofGroup(String capGroup, Cap cap, int season, LocalDate on) {
    return used(e -> e.capGroup().equals(capGroup), cap, season, on);
  }

  /** One form's sum against its own cap. */
  public UsedAndLeft ofIngredient(IngredientId ingredient, Cap cap, int season, LocalDate on) {
    return used(e -> e.active().ingredient().id().equals(ingredient), cap, season, on);
  }

  /**
   * The sum of all entries of a kind that count against a cap; a sub-cap of some positions counts
   * those and what the journal gives no position.
   *
   * <p>A season goes by the season an application was made for, and a crop year likewise: from one
   * crop's harvest to the next one's, which is what the journal's season column says. A calendar
   * year goes by date, and so do two of them, this one and the one before. Twelve months roll: an
   * application counts until the same day of the month twelve months on, when it no longer does.
   */
  public UsedAndLeft used(Predicate<LedgerEntry> kind, Cap cap, int season, LocalDate on) {
    List<LedgerEntry> counted = new ArrayList<>();
    for (LedgerEntry e : entries) {
      if (!e.date().isAfter(on)
          && isInPeriod(e, cap, season, on)
          && kind.test(e)
          && e.countsFor(cap)) {
        counted.add(e);
      }
    }
    return UsedAndLeft.of(cap, List.copyOf(counted));
  }

  private static boolean isInPeriod(LedgerEntry e, Cap cap, int season, LocalDate on) {
    return switch (cap.per()) {
      case SEASON, CROP_YEAR -> e.season() == season;
      case CALENDAR_YEAR -> e.date().getYear() == on.getYear();
      case TWELVE_MONTHS -> e.date().plusMonths(12).isAfter(on);
      case TWO_CALENDAR_YEARS -> e.date().getYear() >= on.getYear() - 1;
    };
  }

  /** Applications of a group in a season up to a day, in order; see {@link OneApplication}. */
  public List<OneApplication> applications(String capGroup, int season, LocalDate on) {
    return runs(
        upTo(on).filter(e -> e.capGroup().equals(capGroup) && e.season() == season).toList());
  }

  /**
   * The last entry of a group on an earlier day that a repeat interval counts from; application day
   * is day 0. Parts of a job that wind stopped (at most two days apart, together no more ground
   * than the field) are one application, not a repeat; acres that nobody wrote down pass for the
   * whole field.
   */
  public Optional<LedgerEntry> lastApplication(String capGroup, LocalDate before) {
    List<LedgerEntry> group = new ArrayList<>();
    for (LedgerEntry e : entries) {
      if (!e.date().isAfter(before) && e.capGroup().equals(capGroup)) {
        group.add(e);
      }
    }
    List<OneApplication> runs = runs(group);
    boolean partOfOneJob =
        !runs.isEmpty()
            && runs.get(runs.size() - 1).last().equals(before)
            && fitsTheField(runs.get(runs.size() - 1));
    LocalDate limit = partOfOneJob ? runs.get(runs.size() - 1).first() : before;
    LedgerEntry last = null;
    for (LedgerEntry e : group) {
      last = e.date().isBefore(limit) ? e : last;
    }
    return Optional.ofNullable(last);
  }

  /**
   * What was sprayed in the months before a day, that first day included, the day itself not:
   * whatever may still forbid the crop planted on it.
   */
  public List<LedgerEntry> inMonthsBefore(LocalDate day, int months) {
    LocalDate from = day.minusMonths(months);
    return entries.stream()
        .filter(e -> !e.date().isBefore(from) && e.date().isBefore(day))
        .toList();
  }

  private Stream<LedgerEntry> upTo(LocalDate on) {
    return entries.stream().filter(e -> !e.date().isAfter(on));
  }

  private static List<OneApplication> runs(List<LedgerEntry> ordered) {
    List<OneApplication> runs = new ArrayList<>();
    List<LedgerEntry> current = new ArrayList<>();
    for (LedgerEntry e : ordered) {
      if (!current.isEmpty() && current.get(0).daysTo(e.date()) > OneApplication.DAYS_OF_ONE) {
        runs.add(run(current));
        current = new ArrayList<>();
      }
      current.add(e);
    }
    if (!current.isEmpty()) {
      runs.add(run(current));
    }
    return runs;
  }

  private static OneApplication run(List<LedgerEntry> entries) {
    return new OneApplication(
        entries.get(0).date(), entries.get(entries.size() - 1).date(), entries);
  }

  private boolean fitsTheField(OneApplication run) {
    double acres =
        run.entries().stream()
            .map(LedgerEntry::date)
            .distinct()
            .mapToDouble(
                day ->
                    run.entries().stream()
                        .filter(e -> e.date().equals(day))
                        .mapToDouble(e -> e.acres().orElse(fieldAcres))
                        .max()
                        .orElse(0))
            .sum();
    return !Quantity.exceeds(acres, fieldAcres);
  }
}
