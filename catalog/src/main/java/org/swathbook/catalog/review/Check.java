package org.swathbook.catalog.review;

import java.time.LocalDate;
import java.util.List;
import org.swathbook.catalog.file.WrittenCatalog;

/** One thing to look for in a whole catalog; what concerns a single file is found on loading. */
interface Check {
  List<Remark> remarks(WrittenCatalog catalog, LocalDate today);
}
