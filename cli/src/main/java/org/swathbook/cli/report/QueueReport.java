package org.swathbook.cli.report;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Field;
import org.swathbook.check.OpenHours;
import org.swathbook.check.QueuedPass;

/**
 * The passes of all fields on a day, those that a sprayer should see to first on top.
 *
 * @param leftOut fields without a program to look at
 */
public record QueueReport(List<Row> rows, List<OrderReport.LeftOut> leftOut) {

  /**
   * A pass of a field.
   *
   * @param program file that it stands in
   * @param hours open hours of the next days by the forecast; empty without one, or where the pass
   *     is not looked at
   */
  public record Row(Field field, String program, QueuedPass pass, Optional<OpenHours> hours) {}

  /**
   * By state; of those that close the one with the earliest last day, then with fewest days fit to
   * spray till then; of the others the earliest; then the larger field, then the order of the book.
   */
  private static final Comparator<Row> URGENCY =
      Comparator.comparing((Row r) -> r.pass().state())
          .thenComparing(r -> r.pass().lastDay().orElse(LocalDate.MAX))
          .thenComparing(r -> r.pass().lastDay().isPresent() ? r.pass().sprayDays() : 0)
          .thenComparing(r -> r.pass().date())
          .thenComparing(r -> -r.field().acres());

  public QueueReport {
    rows = rows.stream().sorted(URGENCY).toList();
    leftOut = List.copyOf(leftOut);
  }
}
