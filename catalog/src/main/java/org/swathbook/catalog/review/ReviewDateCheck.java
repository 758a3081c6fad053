package org.swathbook.catalog.review;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.file.WrittenCatalog;
import org.swathbook.catalog.file.WrittenEntry;
import org.swathbook.source.MapNode;
import org.swathbook.source.Node;
import org.swathbook.source.ScalarNode;

/** Labels change every winter: an entry that nobody held against one for a year is stale. */
final class ReviewDateCheck implements Check {
  /** Our default: labels are revised from one season to the next. */
  private static final int MONTHS = 12;

  @Override
  public List<Remark> remarks(WrittenCatalog catalog, LocalDate today) {
    List<Remark> out = new ArrayList<>();
    for (WrittenEntry e : catalog.entries()) {
      Optional<Node> node = reviewed(e.keys());
      Optional<LocalDate> date = node.flatMap(ReviewDateCheck::date);
      if (date.isPresent() && date.get().plusMonths(MONTHS).isBefore(today)) {
        out.add(
            Remark.advice(
                node.get().mark(),
                "last reviewed " + date.get() + ", more than " + MONTHS + " months ago",
                "hold it against the current label and set the date"));
      }
      if (date.isPresent() && date.get().isAfter(today)) {
        out.add(
            Remark.error(
                node.get().mark(),
                "reviewed " + date.get() + ", which is still to come",
                "write the day on which it was held against the label"));
      }
    }
    return out;
  }

  private static Optional<Node> reviewed(MapNode keys) {
    return keys.find("label")
        .flatMap(l -> l instanceof MapNode m ? m.find("reviewed") : Optional.empty())
        .or(() -> keys.find("reviewed"));
  }

  private static Optional<LocalDate> date(Node node) {
    try {
      return node instanceof ScalarNode s
          ? Optional.of(LocalDate.parse(s.text()))
          : Optional.empty();
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }
}
