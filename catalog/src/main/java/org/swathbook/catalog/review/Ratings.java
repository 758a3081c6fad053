package org.swathbook.catalog.review;

import java.util.Comparator;
import java.util.List;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.WeedId;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.WrittenEntry;

/** What is known of an entry's part in the control of weeds. */
public final class Ratings {
  private static final Comparator<Response> ORDER =
      Comparator.comparing(Response::timing)
          .thenComparing(Response::ingredient)
          .thenComparing(Response::weed);

  private Ratings() {}

  /** The ratings of an ingredient or of a weed, by timing, then ingredient and weed. */
  public static List<Response> of(Catalog catalog, WrittenEntry entry) {
    return catalog.responses().stream()
        .filter(
            r ->
                entry.kind() == EntryKind.INGREDIENT && r.ingredient().value().equals(entry.id())
                    || entry.kind() == EntryKind.WEED && r.weed().equals(WeedId.of(entry.id())))
        .sorted(ORDER)
        .toList();
  }
}
