package org.swathbook.book;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.swathbook.program.FieldId;

/**
 * All applications, by date, then pass and line; indexed by field, since a long journal holds a
 * million rows of many fields.
 */
public final class Journal {

  public static final Journal EMPTY = new Journal(List.of());

  private static final int LONG = 100_000;

  private final List<Application> rows;
  private final Map<FieldId, List<Application>> byField;

  /** All in order, made when first asked for: two threads may both make it, of the same rows. */
  private volatile @Nullable List<Application> ordered;

  public Journal(List<Application> applications) {
    this.rows = List.copyOf(applications);
    this.byField = new HashMap<>();
    int from = 0;
    while (from < rows.size()) {
      int to = endOfField(from);
      // The rows of a pass mostly stand together, often all that a field has: then none is copied.
      List<Application> stretch = rows.subList(from, to);
      FieldId field = rows.get(from).field();
      List<Application> above = byField.get(field);
      byField.put(field, above == null ? stretch : joined(above, stretch));
      from = to;
    }
    // No field knows of another. A thread takes longer to start than a short journal to sort.
    Set<Map.Entry<FieldId, List<Application>>> all = byField.entrySet();
    (rows.size() < LONG ? all.stream() : all.parallelStream())
        .forEach(e -> e.setValue(inOrder(e.getValue())));
  }

  /** Place behind the rows from one on that are of the same field. */
  private int endOfField(int from) {
    FieldId field = rows.get(from).field();
    int to = from + 1;
    while (to < rows.size() && rows.get(to).field().equals(field)) {
      to++;
    }
    return to;
  }

  private static List<Application> joined(List<Application> above, List<Application> more) {
    List<Application> out = above instanceof ArrayList ? above : new ArrayList<>(above);
    out.addAll(more);
    return out;
  }

  private static List<Application> inOrder(List<Application> ofField) {
    for (int i = 1; i < ofField.size(); i++) {
      if (compare(ofField.get(i - 1), ofField.get(i)) > 0) {
        return ofField.stream().sorted(Journal::compare).toList();
      }
    }
    return ofField instanceof ArrayList ? List.copyOf(ofField) : ofField;
  }

  private Journal(FieldId field, List<Application> inOrder) {
    this.rows = inOrder;
    this.byField = Map.of(field, inOrder);
    this.ordered = inOrder;
  }

  /** What it has of one field, which is in order already. */
  public Journal only(FieldId field) {
    List<Application> its = of(field);
    return its.isEmpty() ? EMPTY : new Journal(field, its);
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
    List<Application> now = ordered;
    if (now == null) {
      now = rows.stream().sorted(Journal::compare).toList();
      ordered = now;
    }
    return now;
  }

  public List<Application> of(FieldId field) {
    return byField.getOrDefault(field, List.of());
  }

  @Override
  public boolean equals(Object o) {
    return o instanceof Journal j && j.applications().equals(applications());
  }

  @Override
  public int hashCode() {
    return applications().hashCode();
  }
}
