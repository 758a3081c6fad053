package org.swathbook.catalog.review;

import java.time.LocalDate;
import java.util.List;
import org.swathbook.catalog.file.WrittenCatalog;

/** Looks a catalog over for contradictions and for what its keeper should see to. */
public final class Lint {
  private static final List<Check> CHECKS =
      List.of(
          new ActivityCheck(),
          new SiblingCheck(),
          new HeightAndStageCheck(),
          new PremixCheck(),
          new ReviewDateCheck(),
          new RegistrationCheck(),
          new SourceCheck(),
          new UnstatedCheck(),
          new ProtectionCheck(),
          new UnratedCheck(),
          new UnusedCheck());

  private Lint() {}

  /** Errors first, then advice, each by file, line and column. */
  public static List<Remark> remarks(WrittenCatalog catalog, LocalDate today) {
    return CHECKS.stream().flatMap(c -> c.remarks(catalog, today).stream()).sorted().toList();
  }
}
