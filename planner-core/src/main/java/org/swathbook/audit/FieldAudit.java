package org.swathbook.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.PastSeason;
import org.swathbook.catalog.WeedId;

/**
 * What the past seasons of one field come to.
 *
 * @param leanings by driver weed, in the order in which they come up
 * @param sites by driver weed its seasons in order
 * @param findings of the rules, by season
 * @param silent of what nothing can be said, with the reason
 */
record FieldAudit(
    Field today,
    List<Leaning> leanings,
    Map<WeedId, List<SeasonSites>> sites,
    List<JournalFinding> findings,
    List<String> silent) {

  /**
   * @param own the book with nothing in it of other fields
   */
  static FieldAudit of(Book own, Field field, SharedTraces shared) {
    Map<WeedId, List<SeasonSites>> sites = new LinkedHashMap<>();
    List<JournalFinding> findings = new ArrayList<>();
    List<String> unjudged = new ArrayList<>();
    RecordedSeasons recorded = new RecordedSeasons(own, field);
    for (PastSeason season : recorded.both()) {
      SeasonAudit.Result r = SeasonAudit.of(own, field, season, shared);
      for (SeasonSites s : r.sites()) {
        sites.computeIfAbsent(s.weed().weed().id(), w -> new ArrayList<>()).add(s);
      }
      findings.addAll(r.findings());
      unjudged.addAll(r.unjudged());
    }
    return new FieldAudit(
        field,
        sites.values().stream().map(Leaning::of).toList(),
        sites,
        findings,
        silent(field, recorded, unjudged, sites.isEmpty()));
  }

  /**
   * @param unjudged why seasons are not judged by rules
   * @param undriven whether no season has a driver weed
   */
  static List<String> silent(
      Field field, RecordedSeasons recorded, List<String> unjudged, boolean undriven) {
    List<String> silent = new ArrayList<>();
    unjudged.forEach(why -> silent.add(field.id() + ": " + why));
    silent.addAll(recorded.notKnown());
    if (undriven) {
      silent.add(
          field.id()
              + ": no season that both seasons.csv and applications.csv have, or no driver weed"
              + " in it.");
    }
    return List.copyOf(silent);
  }
}
