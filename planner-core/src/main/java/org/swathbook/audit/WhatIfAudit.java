package org.swathbook.audit;

import java.util.List;
import java.util.Optional;
import org.swathbook.audit.FieldChange.Outcome;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.PastSeason;

/**
 * What one change would have done on every field in the last season of its journal, walked in the
 * weather of that season and judged by the rules of a plan. A change that a label forbids is told
 * and not counted.
 */
public final class WhatIfAudit {
  private WhatIfAudit() {}

  public static WhatIfResult of(Book book, List<Field> fields, WhatIf change) {
    FieldBooks books = new FieldBooks(book);
    SharedTraces shared = new SharedTraces(book.catalog());
    // Fields do not know of each other; the results keep their order.
    return new WhatIfResult(
        change, fields.parallelStream().map(f -> of(books.of(f), f, change, shared)).toList());
  }

  private static FieldChange of(Book own, Field field, WhatIf change, SharedTraces shared) {
    List<PastSeason> seasons = new RecordedSeasons(own, field).both();
    if (seasons.isEmpty()) {
      return notTried(field, 0, "no season that both seasons.csv and applications.csv have");
    }
    PastSeason last = seasons.get(seasons.size() - 1);
    SprayedSeason.Found found = SeasonAudit.sprayed(own, field, last, shared);
    if (found.season().isEmpty()) {
      return notTried(field, last.season(), String.join(" ", found.remarks()));
    }
    ChangedSeason season = new ChangedSeason(found.season().get(), found.remarks());
    if (season.drivers().isEmpty()) {
      return season.ended(Outcome.NOT_TRIED, "no driver weed");
    }
    if (change instanceof WhatIf.OverlappingResidual r) {
      return new ResidualAdded(season).on(r.weed());
    }
    return change instanceof WhatIf.PostsBy p
        ? new EarlierPosts(season).by(p.stage())
        : new SecondSiteAdded(season).everywhere();
  }

  private static FieldChange notTried(Field field, int season, String why) {
    return new FieldChange(
        field,
        season,
        Outcome.NOT_TRIED,
        List.of(),
        List.of(why),
        Optional.empty(),
        List.of(),
        List.of());
  }
}
