package org.swathbook.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.PastSeason;
import org.swathbook.rules.Say;

/**
 * Past seasons of a field by who wrote them down: one that {@code seasons.csv} and the journal have
 * is looked at; of the others it is told that they are not known. None is taken for one without
 * herbicides.
 */
final class RecordedSeasons {
  private final Field field;
  private final int now;
  private final SortedMap<Integer, PastSeason> grown = new TreeMap<>();
  private final SortedSet<Integer> sprayed = new TreeSet<>();

  RecordedSeasons(Book book, Field field) {
    this.field = field;
    this.now = book.season();
    for (PastSeason p : book.pastSeasons()) {
      if (p.field().equals(field.id())) {
        grown.putIfAbsent(p.season(), p);
      }
    }
    int last = Integer.MIN_VALUE;
    for (Application a : book.journal().of(field.id())) {
      // Rows of one season mostly stand together.
      if (a.season() != last) {
        last = a.season();
        sprayed.add(last);
      }
    }
  }

  /** Those that both have, in order. */
  List<PastSeason> both() {
    List<PastSeason> out = new ArrayList<>();
    for (PastSeason p : grown.values()) {
      if (p.season() < now && sprayed.contains(p.season())) {
        out.add(p);
      }
    }
    return List.copyOf(out);
  }

  /** What is not known of the others, one sentence each. */
  List<String> notKnown() {
    List<String> out = new ArrayList<>();
    for (int season : sprayed.headSet(now)) {
      if (!grown.containsKey(season)) {
        out.add(
            field.id()
                + ": "
                + season
                + " has rows in applications.csv and none in seasons.csv, so nothing is said of it.");
      }
    }
    for (int season : grown.headMap(now).keySet()) {
      if (!sprayed.contains(season)) {
        out.add(
            field.id()
                + ": "
                + season
                + " has a row in seasons.csv and none in applications.csv: whether and what was sprayed"
                + " is not known, and the season counts nowhere. It is not taken for one without"
                + " herbicides.");
      }
    }
    List<String> gaps = gaps();
    if (!gaps.isEmpty()) {
      out.add(
          field.id()
              + ": neither seasons.csv nor applications.csv has "
              + Say.list(gaps)
              + ", though they have earlier ones: what grew and what was sprayed is not known.");
    }
    return out;
  }

  /** Seasons that nobody wrote down, after the first that somebody did. */
  private List<String> gaps() {
    int first = now;
    first = grown.isEmpty() ? first : Math.min(first, grown.firstKey());
    first = sprayed.isEmpty() ? first : Math.min(first, sprayed.first());
    List<String> out = new ArrayList<>();
    for (int s = first; s < now; s++) {
      if (!grown.containsKey(s) && !sprayed.contains(s)) {
        out.add(Integer.toString(s));
      }
    }
    return out;
  }
}
