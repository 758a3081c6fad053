package org.swathbook.book;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.swathbook.program.FieldId;

/** All applications, by date, then pass and line. */
public record Journal(List<Application> applications) {

  public static final Journal EMPTY = new Journal(List.of());

  public Journal {
    applications =
        applications.stream()
            .sorted(
                Comparator.comparing(Application::date)
                    .thenComparing(Application::pass)
                    .thenComparing(Application::line))
            .toList();
  }

  public List<Application> of(FieldId field) {
    return applications.stream().filter(a -> a.field().equals(field)).toList();
  }

  /** Applications on a field from a date on, inclusive. */
  public List<Application> since(FieldId field, LocalDate from) {
    return of(field).stream().filter(a -> !a.date().isBefore(from)).toList();
  }
}
