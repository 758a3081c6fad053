package org.swathbook.audit;

import java.util.ArrayList;
import java.util.Collections;
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
    return of(book, fields, List.of(change)).get(0);
  }

  /**
   * Several changes, each by itself. Outdoors, and what came of the season as it was sprayed, are
   * the same for all of them.
   */
  public static List<WhatIfResult> of(Book book, List<Field> fields, List<WhatIf> changes) {
    FieldBooks books = new FieldBooks(book);
    SharedTraces shared = new SharedTraces(book.catalog());
    FieldChange[][] out = new FieldChange[changes.size()][fields.size()];
    // Fields do not know of each other; the results keep their order.
    AllHands.each(
        SharedTraces.placesByOutdoors(fields),
        i -> {
          Field field = fields.get(i);
          List<FieldChange> its = of(books.of(field), field, changes, shared);
          for (int c = 0; c < out.length; c++) {
            out[c][i] = its.get(c);
          }
        });
    List<WhatIfResult> results = new ArrayList<>();
    for (int c = 0; c < out.length; c++) {
      results.add(new WhatIfResult(changes.get(c), List.of(out[c])));
    }
    return List.copyOf(results);
  }

  private static List<FieldChange> of(
      Book own, Field field, List<WhatIf> changes, SharedTraces shared) {
    List<PastSeason> seasons = new RecordedSeasons(own, field).both();
    if (seasons.isEmpty()) {
      return Collections.nCopies(
          changes.size(),
          notTried(field, 0, "no season that both seasons.csv and applications.csv have"));
    }
    PastSeason last = seasons.get(seasons.size() - 1);
    SprayedSeason.Found found = SprayedSeason.of(own, field, last, shared);
    if (found.season().isEmpty()) {
      return Collections.nCopies(
          changes.size(), notTried(field, last.season(), String.join(" ", found.remarks())));
    }
    SprayedSeason sprayed = found.season().get();
    SeasonTrial trial = new SeasonTrial(sprayed);
    List<FieldChange> out = new ArrayList<>();
    for (WhatIf change : changes) {
      out.add(of(new ChangedSeason(sprayed, trial, found.remarks()), change));
    }
    return List.copyOf(out);
  }

  private static FieldChange of(ChangedSeason season, WhatIf change) {
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
