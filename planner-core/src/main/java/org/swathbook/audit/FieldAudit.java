package org.swathbook.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.PastSeason;
import org.swathbook.catalog.WeedId;
import org.swathbook.rules.Say;

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
    for (PastSeason season : seasons(own, field)) {
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
        silent(own, field, unjudged, sites.isEmpty()));
  }

  /**
   * @param unjudged why seasons are not judged by rules
   * @param undriven whether no season has a driver weed
   */
  static List<String> silent(Book own, Field field, List<String> unjudged, boolean undriven) {
    List<String> silent = new ArrayList<>();
    unjudged.forEach(why -> silent.add(field.id() + ": " + why));
    for (int season : withoutRow(own, field)) {
      silent.add(
          field.id()
              + ": "
              + season
              + " has rows in applications.csv and none in seasons.csv, so nothing is said of it.");
    }
    for (int season : withoutJournal(own, field)) {
      silent.add(
          field.id()
              + ": "
              + season
              + " has a row in seasons.csv and none in applications.csv: whether and what was sprayed"
              + " is not known, and the season counts nowhere. It is not taken for one without"
              + " herbicides.");
    }
    List<Integer> gaps = gaps(own, field);
    if (!gaps.isEmpty()) {
      silent.add(
          field.id()
              + ": neither seasons.csv nor applications.csv has "
              + Say.list(gaps.stream().map(String::valueOf).toList())
              + ", though they have earlier ones: what grew and what was sprayed is not known.");
    }
    if (undriven) {
      silent.add(
          field.id()
              + ": no season that both seasons.csv and applications.csv have, or no driver weed"
              + " in it.");
    }
    return List.copyOf(silent);
  }

  /** Past seasons that the journal has too, in order. */
  static List<PastSeason> seasons(Book own, Field field) {
    return own.pastSeasons().stream()
        .filter(p -> p.field().equals(field.id()) && p.season() < own.season())
        .filter(p -> own.journal().of(field.id()).stream().anyMatch(a -> a.season() == p.season()))
        .sorted(Comparator.comparing(PastSeason::season))
        .toList();
  }

  /** Past seasons of which somebody wrote down what grew, and nobody what was sprayed. */
  private static List<Integer> withoutJournal(Book own, Field field) {
    Set<Integer> sprayed = new HashSet<>();
    own.journal().of(field.id()).forEach(a -> sprayed.add(a.season()));
    return own.pastSeasons().stream()
        .filter(p -> p.field().equals(field.id()) && p.season() < own.season())
        .map(PastSeason::season)
        .filter(s -> !sprayed.contains(s))
        .sorted()
        .toList();
  }

  /** Seasons that neither file has, after the first that one of them has. */
  private static List<Integer> gaps(Book own, Field field) {
    Set<Integer> known = new TreeSet<>();
    own.journal().of(field.id()).forEach(a -> known.add(a.season()));
    own.pastSeasons().stream()
        .filter(p -> p.field().equals(field.id()))
        .forEach(p -> known.add(p.season()));
    List<Integer> out = new ArrayList<>();
    if (!known.isEmpty()) {
      for (int s = known.iterator().next(); s < own.season(); s++) {
        if (!known.contains(s)) {
          out.add(s);
        }
      }
    }
    return out;
  }

  /** Past seasons in which the journal has passes and nobody wrote down what grew. */
  private static List<Integer> withoutRow(Book own, Field field) {
    return own.journal().of(field.id()).stream()
        .map(Application::season)
        .filter(s -> s < own.season())
        .distinct()
        .filter(
            s ->
                own.pastSeasons().stream()
                    .noneMatch(p -> p.field().equals(field.id()) && p.season() == s))
        .sorted()
        .toList();
  }
}
