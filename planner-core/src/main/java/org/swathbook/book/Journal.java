package org.swathbook.book;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.swathbook.program.FieldId;

/**
 * All applications, by date, then pass and line; indexed by field, since a long journal holds a
 * million rows of many fields.
 */
public final class Journal {

  public static final Journal EMPTY = new Journal(List.of());

  private final List<Application> applications;
  private final Map<FieldId, List<Application>> byField;

  public Journal(List<Application> applications) {
    this.applications = applications.stream().sorted(Journal::compare).toList();
    this.byField =
        this.applications.stream()
            .collect(
                Collectors.groupingBy(
                    Application::field,
                    LinkedHashMap::new,
                    Collectors.collectingAndThen(
                        Collectors.toList(), Collections::unmodifiableList)));
  }

  /** Written out, for most of a million comparisons end at the date. */
  private static int compare(Application a, Application b) {
    int c = a.date().compareTo(b.date());
    if (c == 0) {
      c = a.pass().compareTo(b.pass());
    }
    if (c == 0) {
      // Lines are counted: 2 comes before 10.
      c = Integer.compare(a.line().length(), b.line().length());
    }
    return c != 0 ? c : a.line().compareTo(b.line());
  }

  public List<Application> applications() {
    return applications;
  }

  public List<Application> of(FieldId field) {
    return byField.getOrDefault(field, List.of());
  }

  /** Applications on a field from a date on, inclusive. */
  public List<Application> since(FieldId field, LocalDate from) {
    return of(field).stream().filter(a -> !a.date().isBefore(from)).toList();
  }

  @Override
  public boolean equals(Object o) {
    return o instanceof Journal j && j.applications.equals(applications);
  }

  @Override
  public int hashCode() {
    return applications.hashCode();
  }
}
