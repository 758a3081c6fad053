package org.swathbook.catalog.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.WrittenCatalog;
import org.swathbook.catalog.file.WrittenEntry;
import org.swathbook.catalog.file.WrittenGroup;
import org.swathbook.catalog.file.WrittenValue;

/** Values that nobody can trace. */
final class SourceCheck implements Check {
  private static final int NAMED = 4;

  @Override
  public List<Remark> remarks(WrittenCatalog catalog, LocalDate today) {
    List<Remark> out = new ArrayList<>();
    for (WrittenEntry e : catalog.entries()) {
      List<String> bare = new ArrayList<>();
      for (WrittenGroup g : e.groups()) {
        for (WrittenValue v : g.values()) {
          if (v.source().equals(Source.NOT_GIVEN) && v.isFact() && e.kind() != EntryKind.PRODUCT) {
            bare.add(g.isUse() ? g.name() + ": " + v.key() : v.key());
          }
        }
      }
      if (!bare.isEmpty()) {
        int more = bare.size() - NAMED;
        out.add(
            Remark.advice(
                e.mark(),
                (bare.size() == 1 ? "a value has" : bare.size() + " values have")
                    + " no source: "
                    + String.join("; ", bare.subList(0, Math.min(NAMED, bare.size())))
                    + (more > 0 ? " and " + more + " more" : ""),
                "name the label or paper under sources, or write 'from memory'"));
      }
    }
    return out;
  }
}
