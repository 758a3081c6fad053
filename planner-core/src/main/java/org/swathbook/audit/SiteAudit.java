package org.swathbook.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
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
   * Of a longer book the figures by which fields are ranked are kept of all, and everything is told
   * of so many that lean most, which are walked once more for that.
   */
  private static final int WORST_TOLD = 200;

  public static SiteAudit of(Book book, List<Field> fields) {
    return of(book, fields, fields.size() <= FIELDS_TOLD ? fields.size() : WORST_TOLD);
  }

  static SiteAudit of(Book book, List<Field> fields, int told) {
    FieldBooks books = new FieldBooks(book);
    SharedTraces shared = new SharedTraces(book.catalog());
    boolean all = fields.size() <= told;
    // Fields do not know of each other; the results keep their order.
    List<FieldAudit> audits =
        fields.parallelStream()
            .map(f -> FieldAudit.of(books.of(f), f, shared))
            .map(a -> all ? a : a.withoutDetails())
            .toList();
    List<Leaning> order = new ArrayList<>();
    audits.forEach(a -> order.addAll(a.leanings()));
    order.sort(Leaning.WORST_FIRST);
    List<FieldAudit> open = all ? audits : again(audits, worst(order, told), books, shared);
    Map<FieldId, FieldAudit> details = new HashMap<>();
    open.forEach(a -> details.put(a.today().id(), a));
    List<RankedSites> ranked = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      Leaning l = order.get(i);
      FieldAudit of = details.get(l.field());
      if (of != null) {
        ranked.addAll(ranked(Objects.requireNonNull(of.sites().get(l.weed())), i + 1));
      }
    }
    return new SiteAudit(
        ranked,
        LeaningAcres.of(order),
        growers(fields, order),
        open.stream().flatMap(a -> a.findings().stream()).toList(),
        audits.stream().flatMap(a -> a.silent().stream()).toList(),
        all ? List.of() : List.of(leftOut(fields.size(), told)));
  }

  private static Set<FieldId> worst(List<Leaning> order, int told) {
    Set<FieldId> out = new HashSet<>();
    for (Leaning l : order) {
      if (out.size() < told) {
        out.add(l.field());
      }
    }
    return out;
  }

  private static List<FieldAudit> again(
      List<FieldAudit> audits, Set<FieldId> which, FieldBooks books, SharedTraces shared) {
    return audits.parallelStream()
        .map(FieldAudit::today)
        .filter(f -> which.contains(f.id()))
        .map(f -> FieldAudit.of(books.of(f), f, shared))
        .toList();
  }

  private static String leftOut(int fields, int told) {
    return "All "
        + fields
        + " fields are ranked and counted in the acres; seasons and findings are told of the "
        + told
        + " that lean most. Name a field to see its own.";
  }

  private static Map<String, LeaningAcres> growers(List<Field> fields, List<Leaning> order) {
    Map<FieldId, List<Leaning>> byField = new HashMap<>();
    order.forEach(l -> byField.computeIfAbsent(l.field(), k -> new ArrayList<>()).add(l));
    Map<String, List<Leaning>> byGrower = new LinkedHashMap<>();
    for (Field f : fields) {
      byGrower
          .computeIfAbsent(f.grower(), g -> new ArrayList<>())
          .addAll(byField.getOrDefault(f.id(), List.of()));
    }
    Map<String, LeaningAcres> out = new LinkedHashMap<>();
    byGrower.forEach((g, of) -> out.put(g, LeaningAcres.of(of)));
    return out;
  }

  private static List<RankedSites> ranked(List<SeasonSites> seasons, int rank) {
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
