package org.swathbook.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Supplier;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Site;
import org.swathbook.program.FieldId;

/**
 * Which fields lean on one chemistry: every driver weed of every field through the seasons of the
 * journal.
 *
 * @param ranked the field and weed that leans most first, its seasons in order
 * @param acres leaning acres of all fields
 * @param growers the same by grower, in the order of the fields
 * @param findings of the rules on what was sprayed, by field and season
 * @param notAudited fields of which nothing can be said, with the reason
 * @param notes what a long book's audit leaves out, one sentence each
 */
public record SiteAudit(
    List<RankedSites> ranked,
    LeaningAcres acres,
    Map<String, LeaningAcres> growers,
    List<JournalFinding> findings,
    List<String> notAudited,
    List<String> notes) {

  public SiteAudit {
    ranked = List.copyOf(ranked);
    growers = org.swathbook.catalog.Ordered.map(growers);
    findings = List.copyOf(findings);
    notAudited = List.copyOf(notAudited);
    notes = List.copyOf(notes);
  }

  /** Of as many fields everything is told. */
  private static final int FIELDS_TOLD = 1000;

  /**
   * Of a longer book everything is told of so many that lean most; of the others no more is walked
   * than it takes to know that these do.
   */
  private static final int WORST_TOLD = 200;

  public static SiteAudit of(Book book, List<Field> fields) {
    return of(book, fields, fields.size() <= FIELDS_TOLD ? fields.size() : WORST_TOLD);
  }

  static SiteAudit of(Book book, List<Field> fields, int told) {
    FieldBooks books = new FieldBooks(book);
    SharedTraces shared = new SharedTraces(book.catalog());
    // Fields do not know of each other; the results keep their order.
    if (fields.size() <= told) {
      List<FieldAudit> audits =
          fields.parallelStream().map(f -> FieldAudit.of(books.of(f), f, shared)).toList();
      List<Leaning> order = new ArrayList<>();
      audits.forEach(a -> order.addAll(a.leanings()));
      order.sort(Leaning.WORST_FIRST);
      return of(
          fields,
          new LongOrder(order, List.of(), audits),
          order.stream().map(Leaning::last).toList(),
          audits.stream().flatMap(a -> a.silent().stream()).toList(),
          List.of());
    }
    List<SeasonBySeason> all = lastSeasons(fields, books, shared);
    return of(
        fields,
        LongOrder.of(all, told, books::of, shared),
        all.stream().flatMap(f -> f.last().stream()).toList(),
        all.stream().flatMap(f -> f.silent().stream()).toList(),
        List.of(leftOut(fields.size(), told)));
  }

  /** Fields that share weather and soil are walked one after the other: their days are kept. */
  private static List<SeasonBySeason> lastSeasons(
      List<Field> fields, FieldBooks books, SharedTraces shared) {
    SeasonBySeason[] out = new SeasonBySeason[fields.size()];
    AllHands.each(
        SharedTraces.placesByOutdoors(fields),
        i -> {
          Field field = fields.get(i);
          Book own = books.of(field);
          out[i] = new SeasonBySeason(own, field, shared);
          if (!out[i].isWhole()) {
            out[i].walkNext(own, shared);
          }
        });
    return List.of(out);
  }

  private static SiteAudit of(
      List<Field> fields,
      LongOrder order,
      List<LastSites> last,
      List<String> silent,
      List<String> notes) {
    return new SiteAudit(
        ranked(order),
        LeaningAcres.of(last),
        growers(fields, last),
        order.told().stream().flatMap(a -> a.findings().stream()).toList(),
        silent,
        notes);
  }

  private static List<RankedSites> ranked(LongOrder order) {
    Map<FieldId, FieldAudit> details = new HashMap<>();
    order.told().forEach(a -> details.put(a.today().id(), a));
    List<Supplier<List<RankedSites>>> told = new ArrayList<>();
    for (int i = 0; i < order.ranked().size(); i++) {
      Leaning l = order.ranked().get(i);
      FieldAudit of = details.get(l.field());
      if (of != null) {
        OptionalInt rank = OptionalInt.of(i + 1);
        told.add(() -> ranked(Objects.requireNonNull(of.sites().get(l.weed())), rank));
      }
    }
    for (Leaning l : order.others()) {
      FieldAudit of = Objects.requireNonNull(details.get(l.field()));
      told.add(() -> ranked(Objects.requireNonNull(of.sites().get(l.weed())), OptionalInt.empty()));
    }
    return told.parallelStream().map(Supplier::get).flatMap(List::stream).toList();
  }

  private static String leftOut(int fields, int told) {
    return "All "
        + fields
        + " fields are counted in the acres, by their last seasons. Seasons and findings are told of"
        + " the "
        + told
        + " that lean most, with their places among all. Of the others seasons are walked only as"
        + " far as it takes to know that they lean less, and the rules are not asked. A driver weed"
        + " of a told field that leans less than what is ranked has no place. Name a field to see"
        + " its own.";
  }

  private static Map<String, LeaningAcres> growers(List<Field> fields, List<LastSites> last) {
    Map<FieldId, List<LastSites>> byField = new HashMap<>();
    last.forEach(l -> byField.computeIfAbsent(l.field(), k -> new ArrayList<>()).add(l));
    Map<String, List<LastSites>> byGrower = new LinkedHashMap<>();
    for (Field f : fields) {
      byGrower
          .computeIfAbsent(f.grower(), g -> new ArrayList<>())
          .addAll(byField.getOrDefault(f.id(), List.of()));
    }
    Map<String, LeaningAcres> out = new LinkedHashMap<>();
    byGrower.forEach((g, of) -> out.put(g, LeaningAcres.of(of)));
    return out;
  }

  private static List<RankedSites> ranked(List<SeasonSites> seasons, OptionalInt rank) {
    String reason = LeaningWords.of(seasons, Leaning.streak(seasons, seasons.size() - 1));
    List<RankedSites> out = new ArrayList<>();
    for (int i = 0; i < seasons.size(); i++) {
      Optional<Double> turnover =
          i == 0 ? Optional.empty() : turnover(seasons.get(i - 1), seasons.get(i));
      out.add(new RankedSites(seasons.get(i), Leaning.streak(seasons, i), turnover, rank, reason));
    }
    return out;
  }

  /** (gained + lost) / (distinct of both · years between): Evans et al. 2016, the study's code. */
  static Optional<Double> turnover(SeasonSites a, SeasonSites b) {
    SortedSet<Site> both = new TreeSet<>(a.applied());
    both.addAll(b.applied());
    SortedSet<Site> kept = new TreeSet<>(a.applied());
    kept.retainAll(b.applied());
    return both.isEmpty()
        ? Optional.empty()
        : Optional.of(
            (both.size() - kept.size()) / (double) (both.size() * (b.season() - a.season())));
  }
}
