package org.swathbook.audit;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.HarvestLimit;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.RotationRow;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Use;
import org.swathbook.ledger.Ledger;
import org.swathbook.ledger.LedgerEntry;
import org.swathbook.ledger.OneApplication;
import org.swathbook.ledger.PlannedApplication;
import org.swathbook.rules.LabelUses;
import org.swathbook.rules.NextCrop;
import org.swathbook.rules.label.CapTest;

/**
 * The account of a field on a day: by active, what of its caps and applications is used and left,
 * and what its intervals still keep from the field. Of several uses of a label the strictest
 * interval holds, since the journal does not say under which one it was sprayed.
 */
public final class FieldLedger {
  private final Book book;
  private final Field field;
  private final LocalDate today;
  private final Ledger ledger;

  private FieldLedger(Book book, Field field, List<PlannedApplication> planned, LocalDate today) {
    this.book = book;
    this.field = field;
    this.today = today;
    this.ledger = Ledger.of(book, field, planned);
  }

  /**
   * Actives that count against a cap on that day, or whose intervals are still open, in the order
   * of the alphabet.
   */
  public static List<ActiveLedger> of(Book book, Field field, LocalDate today) {
    return of(book, field, List.of(), today);
  }

  /** The same as if what is planned had been sprayed too. */
  public static List<ActiveLedger> of(
      Book book, Field field, List<PlannedApplication> planned, LocalDate today) {
    FieldLedger all = new FieldLedger(book, field, planned, today);
    Map<IngredientId, List<LedgerEntry>> byActive = new TreeMap<>();
    all.ledger.entries().stream()
        .filter(e -> !e.date().isAfter(today))
        .filter(e -> !e.date().isBefore(today.minusMonths(Ledger.ROTATION_MONTHS)))
        .forEach(
            e ->
                byActive
                    .computeIfAbsent(e.active().ingredient().id(), k -> new ArrayList<>())
                    .add(e));
    return byActive.values().stream()
        .map(all::active)
        .filter(
            a ->
                a.made() > 0
                    || !a.until().isEmpty()
                    || a.caps().stream().anyMatch(c -> !c.sum().counted().isEmpty()))
        .toList();
  }

  private ActiveLedger active(List<LedgerEntry> entries) {
    Ingredient i = entries.get(0).active().ingredient();
    TreeSet<String> notKnown = new TreeSet<>();
    List<ActiveLedger.CapLine> caps = new ArrayList<>();
    for (CapTest t : CapTest.ofSeason(book.catalog(), field, i)) {
      var sum = ledger.used(t.counts(), t.cap(), book.season(), today);
      if (!sum.isComplete()) {
        notKnown.add("weights in another basis than a cap's");
      }
      caps.add(new ActiveLedger.CapLine(t.what(), sum, t.source().text()));
    }
    List<Use> uses = LabelUses.inCrop(i, field);
    if (uses.stream().anyMatch(u -> u.caps().isUnknown())) {
      notKnown.add("a cap of some use");
    }
    List<OneApplication> made = ledger.applications(i.capGroup(), book.season(), today);
    return new ActiveLedger(
        i,
        caps,
        made.size(),
        left(i, made.size(), notKnown),
        until(i, uses, entries, notKnown),
        List.copyOf(notKnown));
  }

  /** A use without a number of applications leaves the number open for all. */
  private OptionalInt left(Ingredient i, int made, Set<String> notKnown) {
    List<LabelUses.Of> uses = LabelUses.ofGroup(book.catalog(), i.capGroup(), field);
    if (uses.stream().anyMatch(o -> o.use().applications().isUnknown())) {
      notKnown.add("most applications of some use");
    }
    if (uses.isEmpty() || uses.stream().anyMatch(o -> o.use().applications().find().isEmpty())) {
      return OptionalInt.empty();
    }
    int most = uses.stream().mapToInt(o -> o.use().applications().find().orElse(0)).max().orElse(0);
    return OptionalInt.of(Math.max(0, most - made));
  }

  private OpenIntervals until(
      Ingredient i, List<Use> uses, List<LedgerEntry> entries, Set<String> notKnown) {
    List<LedgerEntry> season = entries.stream().filter(e -> e.season() == book.season()).toList();
    Optional<LedgerEntry> last = season.stream().reduce((a, b) -> b);
    return new OpenIntervals(
        last.flatMap(e -> reentry(i, e, notKnown)),
        last.flatMap(e -> repeat(uses, e, notKnown)),
        last.map(e -> harvest(uses, e, notKnown)).orElse(Map.of()),
        nextCrops(i, entries, notKnown));
  }

  /** From the end of the spraying, or from midnight after it where nobody wrote the end down. */
  private Optional<LocalDateTime> reentry(Ingredient i, LedgerEntry e, Set<String> notKnown) {
    if (i.terms().reentryHours().isUnknown()) {
      notKnown.add("re-entry");
    }
    LocalDateTime end =
        e.row()
            .flatMap(r -> r.record().end())
            .map(t -> e.date().atTime(t))
            .orElseGet(() -> e.date().plusDays(1).atStartOfDay());
    return i.terms()
        .reentryHours()
        .find()
        .map(h -> end.plusMinutes(Math.round(60 * h)))
        .filter(t -> t.isAfter(today.atStartOfDay()));
  }

  private Optional<LocalDate> repeat(List<Use> uses, LedgerEntry last, Set<String> notKnown) {
    if (uses.stream().anyMatch(u -> u.repeatDays().isUnknown())) {
      notKnown.add("days between two applications of some use");
    }
    return uses.stream()
        .flatMap(u -> u.repeatDays().find().stream())
        .max(Integer::compare)
        .map(last.date()::plusDays)
        .filter(d -> d.isAfter(today));
  }

  private Map<Commodity, LocalDate> harvest(
      List<Use> uses, LedgerEntry last, Set<String> notKnown) {
    Map<Commodity, LocalDate> out = new LinkedHashMap<>();
    List<Use> made =
        uses.stream()
            .filter(u -> last.positions().isEmpty() || LabelUses.isIn(u, last.positions()))
            .toList();
    for (Commodity c : field.uses()) {
      for (Use u : made) {
        Stated<HarvestLimit> limit = u.harvestLimit(c);
        if (limit.isUnknown()) {
          notKnown.add("days before a harvest of some use");
        }
        limit
            .find()
            .map(l -> l.refused() ? LocalDate.MAX : last.date().plusDays(l.days()))
            .filter(d -> d.isAfter(today))
            .ifPresent(d -> out.merge(c, d, (a, b) -> a.isAfter(b) ? a : b));
      }
    }
    return out;
  }

  private Map<CropId, LocalDate> nextCrops(
      Ingredient i, List<LedgerEntry> entries, Set<String> notKnown) {
    Map<CropId, LocalDate> out = new LinkedHashMap<>();
    for (CropId next : field.nextCrops()) {
      Stated<List<RotationRow>> rows = i.rotationTo(next);
      if (rows.isUnknown()) {
        notKnown.add("months to " + next);
      }
      for (LedgerEntry e : entries) {
        Optional<NextCrop> answer =
            rows.find().flatMap(stated -> NextCrop.after(book, field, e, stated));
        if (rows.find().isPresent() && answer.isEmpty()) {
          notKnown.add("months to " + next);
        }
        if (answer.isPresent() && answer.get().dependsOnUnknown()) {
          notKnown.add("soil or rain on which the months to " + next + " depend");
        }
        answer
            .map(a -> a.dependsOnUnknown() ? a.certain() : a.possible())
            .filter(d -> d.isAfter(today))
            .ifPresent(d -> out.merge(next, d, (a, b) -> a.isAfter(b) ? a : b));
      }
    }
    return out;
  }
}
