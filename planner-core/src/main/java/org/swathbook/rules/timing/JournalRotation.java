package org.swathbook.rules.timing;

import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.RotationRow;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.ledger.Ledger;
import org.swathbook.ledger.LedgerEntry;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.LabelUses;
import org.swathbook.rules.NextCrop;
import org.swathbook.rules.Rule;
import org.swathbook.rules.Say;

/** Next-crop intervals of what the journal holds, against the crop of the season. */
record JournalRotation(Rule rule, Book book, Field field, boolean replanting, Findings out) {

  /** What earlier seasons, and this one before its crop, had. */
  static JournalRotation ofRotation(Rule rule, Book book, Field field, Findings out) {
    return new JournalRotation(rule, book, field, false, out);
  }

  /** What another crop of this season had. */
  static JournalRotation ofReplanting(Rule rule, Book book, Field field, Findings out) {
    return new JournalRotation(rule, book, field, true, out);
  }

  void judge() {
    judge(Ledger.of(book, field, List.of()));
  }

  /** The same by a ledger that is at hand. What is planned in it was sprayed on no other crop. */
  void judge(Ledger ledger) {
    for (LedgerEntry entry : ledger.inMonthsBefore(field.plantDate(), Ledger.ROTATION_MONTHS)) {
      Ingredient active = entry.active().ingredient();
      if (isOnOtherCrop(entry) != replanting || isForThisCrop(entry)) {
        continue;
      }
      Stated<List<RotationRow>> rows = active.rotationTo(field.crop());
      if (rows instanceof Stated.Value<List<RotationRow>> v) {
        judge(entry, v.value(), v.source());
      } else if (rows.isUnknown()) {
        NextCropWords.askInterval(rule, active, field.crop(), out);
      }
    }
  }

  /** Whether the row names another crop of this season. */
  private boolean isOnOtherCrop(LedgerEntry entry) {
    return entry.season() == book.season()
        && entry
            .row()
            .map(Application::crop)
            .filter(c -> !c.isBlank())
            .flatMap(c -> book.catalog().findCrop(c))
            .filter(c -> !c.id().equals(field.crop()))
            .isPresent();
  }

  /** A listed spraying for the crop itself goes by its planting interval. */
  private boolean isForThisCrop(LedgerEntry entry) {
    return entry.season() == book.season()
        && LabelUses.inCrop(entry.active().ingredient(), field).stream()
            .anyMatch(u -> u.isIn(Position.Phase.BEFORE_EMERGENCE));
  }

  private void judge(LedgerEntry entry, List<RotationRow> rows, Source source) {
    Ingredient active = entry.active().ingredient();
    Optional<NextCrop> answer =
        NextCrop.of(
            rows,
            field,
            field.traits(),
            entry.active(),
            entry.product().formulation(),
            entry.date(),
            (sprayed, mm) -> NextCrop.rainObserved(book.station(field), sprayed, mm));
    if (answer.isEmpty()) {
      NextCropWords.askInterval(rule, active, field.crop(), out);
      return;
    }
    NextCrop a = answer.get();
    About about = About.PROGRAM.withIngredient(active.id()).withProduct(entry.product().id());
    if (field.plantDate().isBefore(a.certain())) {
      out.block(
          rule,
          about,
          () ->
              NextCropWords.tooSoon(
                  active,
                  entry.date(),
                  NextCropWords.cropName(book, field.crop()),
                  field.plantDate(),
                  a,
                  source));
    } else if (field.plantDate().isBefore(a.possible())) {
      NextCropWords.askSoil(rule, active, field.crop(), out);
    } else if (a.interval().roughDays() > 0
        && ChronoUnit.DAYS.between(a.possible(), field.plantDate()) < NextCropWords.CLOSE_DAYS) {
      out.note(
          rule,
          about,
          () ->
              NextCropWords.toSpare(
                  active,
                  " of " + Say.date(entry.date()),
                  NextCropWords.cropName(book, field.crop()),
                  field.plantDate(),
                  a.possible(),
                  source));
    }
  }
}
