package org.swathbook.catalog.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.WrittenCatalog;
import org.swathbook.catalog.file.WrittenEntry;

/** Limits that an ingredient leaves open; each is a question whenever it matters. */
final class UnstatedCheck implements Check {
  @Override
  public List<Remark> remarks(WrittenCatalog catalog, LocalDate today) {
    List<Remark> out = new ArrayList<>();
    for (WrittenEntry e : catalog.of(EntryKind.INGREDIENT)) {
      List<Unstated> open = Unstated.of(e);
      // Apart, since one line would be too long to read.
      for (boolean whole : new boolean[] {true, false}) {
        String what =
            open.stream()
                .filter(u -> u.uses().isEmpty() == whole)
                .map(Unstated::text)
                .collect(Collectors.joining(", "));
        if (!what.isEmpty()) {
          out.add(
              Remark.advice(
                  e.mark(),
                  (whole ? "not stated: " : "not stated in its uses: ") + what,
                  "look them up on the label; 'none' where it has no such limit"));
        }
      }
    }
    return out;
  }
}
