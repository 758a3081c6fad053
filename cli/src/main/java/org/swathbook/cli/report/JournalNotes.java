package org.swathbook.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.swathbook.book.Field;
import org.swathbook.check.SeasonSoFar;
import org.swathbook.program.Pass;

/** What the journal has sprayed on a field this season, for the head of a report. */
public final class JournalNotes {
  private JournalNotes() {}

  /** One sentence each; nothing for a field that the season has not begun on. */
  public static List<String> of(Field field, SeasonSoFar soFar) {
    List<String> out = new ArrayList<>();
    if (!soFar.isEmpty()) {
      out.add(
          "Made in "
              + field.id()
              + " this season, by the journal: "
              + soFar.made().stream().map(JournalNotes::pass).collect(Collectors.joining("; "))
              + ". Every program starts from that; what is made is not judged again.");
    }
    soFar.notes().forEach(n -> out.add(field.id() + ": " + n));
    return out;
  }

  private static String pass(Pass made) {
    return SeasonSoFar.dateOf(made)
        + " "
        + made.mix().actives().stream()
            .map(a -> a.ingredient().name())
            .distinct()
            .collect(Collectors.joining(", "));
  }
}
