package org.swathbook.catalog.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.WrittenCatalog;
import org.swathbook.catalog.file.WrittenEntry;
import org.swathbook.catalog.file.WrittenGroup;

/** Products of which a load sheet cannot say what to wear. */
final class ProtectionCheck implements Check {
  @Override
  public List<Remark> remarks(WrittenCatalog catalog, LocalDate today) {
    List<Remark> out = new ArrayList<>();
    for (WrittenEntry e : catalog.of(EntryKind.PRODUCT)) {
      WrittenGroup whole = e.groups().get(0);
      if (!whole.has("protection")) {
        out.add(
            Remark.advice(
                e.mark(),
                "not stated: protective equipment",
                "look it up on the label; 'protection: none' where it names nothing"));
      }
    }
    return out;
  }
}
