package org.swathbook.cli.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Application;
import org.swathbook.book.FederalRecord;
import org.swathbook.book.Field;
import org.swathbook.book.file.JournalWriter;
import org.swathbook.check.Judgement;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
import org.swathbook.program.Dose;

/**
 * What a call wrote into the journal, with what is to be said of it.
 *
 * @param date day of the spraying
 * @param judgement of the pass, as it was written down; empty for a correction
 * @param federal of the whole pass, rows that stood there before among it
 */
public record RecordedPass(
    Field field,
    LocalDate date,
    JournalWriter.Written written,
    Optional<Judgement> judgement,
    FederalRecord federal) {

  /** What a reader should know of how it was written. */
  public List<String> notes() {
    List<String> out = new ArrayList<>();
    if (!written.addedColumns().isEmpty()) {
      out.add(
          "applications.csv had no column for "
              + String.join(", ", written.addedColumns())
              + "; added at the right, empty in the rows that were there.");
    }
    for (Application a : written.rows()) {
      if (a.acres().isPresent() && Quantity.exceeds(a.acres().getAsDouble(), field.acres())) {
        out.add("Line " + a.line() + ": more acres than the field has.");
      }
    }
    if (written.rows().stream().anyMatch(a -> a.position().isBlank())) {
      out.add(
          "No crop stage was written down (--stage): caps that count some positions only count these"
              + " rows too.");
    }
    return List.copyOf(out);
  }

  /**
   * How much of the product went out; empty when the row names an ingredient and not the product,
   * or no acres.
   */
  public static Optional<Quantity> total(Application a) {
    Dose dose = a.dose();
    if (dose.named() || a.acres().isEmpty()) {
      return Optional.empty();
    }
    double areas = dose.rate().area().fromSi(Unit.ACRE.toSi(a.acres().getAsDouble()));
    return Optional.of(new Quantity(dose.rate().amount() * areas, dose.rate().unit()));
  }
}
