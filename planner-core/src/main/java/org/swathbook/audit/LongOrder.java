package org.swathbook.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.WeedId;
import org.swathbook.program.FieldId;

/**
 * The fields of a long book that lean most, found without walking all seasons of all of them.
 *
 * <p>Fields stand in the order of the most that they can lean by, and of their acres. As long as
 * one of the first has a season left, such seasons are walked; a field that falls behind by what
 * they tell is left alone. When the first are walked whole, nothing behind them can come before
 * them, for what a field can lean by at most never rises: they are the first of all, in their own
 * places.
 *
 * <p>How much control hangs on one site decides between equals only, and takes as many walks as
 * there are sites: it is found for those that are told and for their equals.
 *
 * @param ranked weeds of fields, from the one that leans most to the last field's that is told
 * @param others weeds of told fields that come behind these, nobody knows how far
 * @param told in the order of the fields
 */
record LongOrder(List<Leaning> ranked, List<Leaning> others, List<FieldAudit> told) {

  /** First the one that may lean most; of equal ones those of which it is not known yet. */
  private static final Comparator<SeasonBySeason> BY_MOST =
      Comparator.comparingLong((SeasonBySeason f) -> -f.most())
          .thenComparingDouble(f -> -f.field().acres())
          .thenComparing(SeasonBySeason::isWhole)
          .thenComparing(f -> f.field().id().value());

  LongOrder {
    ranked = List.copyOf(ranked);
    others = List.copyOf(others);
    told = List.copyOf(told);
  }

  /**
   * @param fields all, in their order; their seasons are walked as far as needed
   * @param most fields that are told
   * @param own the book of a field
   */
  static LongOrder of(
      List<SeasonBySeason> fields, int most, Function<Field, Book> own, SharedTraces shared) {
    walkFirst(fields, most, own, shared);
    List<Leaning> order = new ArrayList<>();
    fields.stream().filter(SeasonBySeason::isWhole).forEach(f -> order.addAll(f.leanings()));
    order.sort(Leaning.WORST_FIRST);
    Map<FieldId, SeasonBySeason> byId = new HashMap<>();
    fields.forEach(f -> byId.put(f.field().id(), f));
    Set<FieldId> known = first(order, most, true);
    know(order, known, byId, own, shared);
    Set<FieldId> told = first(order, most, false);
    int behind = behindLast(order, told);
    Set<FieldId> equals = equalsOf(told, order.subList(0, behind));
    equals.removeAll(known);
    know(order, equals, byId, own, shared);
    return new LongOrder(
        order.subList(0, behind),
        order.subList(behind, order.size()).stream().filter(l -> told.contains(l.field())).toList(),
        tell(
            fields.stream().map(SeasonBySeason::field).filter(f -> told.contains(f.id())).toList(),
            own,
            shared));
  }

  private static List<FieldAudit> tell(
      List<Field> fields, Function<Field, Book> own, SharedTraces shared) {
    Map<FieldId, FieldAudit> told = new ConcurrentHashMap<>();
    AllHands.each(
        fields.stream().sorted(SharedTraces.BY_OUTDOORS).toList(),
        f -> told.put(f.id(), FieldAudit.of(own.apply(f), f, shared)));
    return fields.stream().map(f -> Objects.requireNonNull(told.get(f.id()))).toList();
  }

  private static void walkFirst(
      List<SeasonBySeason> fields, int most, Function<Field, Book> own, SharedTraces shared) {
    // Only the first are ever asked for: the rest of thousands need not be put in order.
    PriorityQueue<SeasonBySeason> order = new PriorityQueue<>(BY_MOST);
    fields.stream().filter(f -> f.most() >= 0).forEach(order::add);
    while (true) {
      // Out of the order while what it goes by changes.
      List<SeasonBySeason> first = takeFirst(order, most);
      List<SeasonBySeason> open =
          new ArrayList<>(first.stream().filter(f -> !f.isWhole()).toList());
      if (open.isEmpty()) {
        return;
      }
      SeasonBySeason last = first.get(first.size() - 1);
      long leaning = last.most();
      double acres = last.field().acres();
      open.sort(Comparator.comparing(SeasonBySeason::field, SharedTraces.BY_OUTDOORS));
      AllHands.each(
          open,
          f -> {
            Book book = own.apply(f.field());
            do {
              f.walkNext(book, shared);
            } while (!f.isWhole()
                && (f.most() > leaning || f.most() == leaning && f.field().acres() >= acres));
          });
      order.addAll(first);
    }
  }

  private static List<SeasonBySeason> takeFirst(PriorityQueue<SeasonBySeason> order, int most) {
    List<SeasonBySeason> out = new ArrayList<>();
    while (out.size() < most && !order.isEmpty()) {
      out.add(order.remove());
    }
    return out;
  }

  /**
   * The fields that come first.
   *
   * @param withEquals of the last of them too
   */
  private static Set<FieldId> first(List<Leaning> order, int most, boolean withEquals) {
    Set<FieldId> out = new HashSet<>();
    for (int i = 0; i < order.size(); i++) {
      boolean equal = i > 0 && Leaning.byFigures(order.get(i - 1), order.get(i)) == 0;
      if (out.size() >= most && !(withEquals && equal)) {
        return out;
      }
      out.add(order.get(i).field());
    }
    return out;
  }

  /** The place behind the first weed of the field that comes last of those told. */
  private static int behindLast(List<Leaning> order, Set<FieldId> told) {
    Set<FieldId> missing = new HashSet<>(told);
    int at = 0;
    while (!missing.isEmpty()) {
      missing.remove(order.get(at).field());
      at++;
    }
    return at;
  }

  /** Fields that stand equal with one of those told, for any of their weeds. */
  private static Set<FieldId> equalsOf(Set<FieldId> told, List<Leaning> order) {
    Set<FieldId> out = new HashSet<>();
    int from = 0;
    for (int i = 1; i <= order.size(); i++) {
      if (i == order.size() || Leaning.byFigures(order.get(from), order.get(i)) != 0) {
        List<Leaning> equal = order.subList(from, i);
        if (equal.size() > 1 && equal.stream().anyMatch(l -> told.contains(l.field()))) {
          equal.forEach(l -> out.add(l.field()));
        }
        from = i;
      }
    }
    return out;
  }

  /**
   * Finds what hangs on one site for the weeds of some fields that are walked whole, and puts each
   * where it belongs then.
   */
  private static void know(
      List<Leaning> order,
      Set<FieldId> which,
      Map<FieldId, SeasonBySeason> fields,
      Function<Field, Book> own,
      SharedTraces shared) {
    Map<FieldId, Map<WeedId, Long>> hanging = new ConcurrentHashMap<>();
    List<SeasonBySeason> asked =
        which.stream().map(id -> Objects.requireNonNull(fields.get(id))).toList();
    AllHands.each(asked, f -> hanging.put(f.field().id(), f.hanging(own.apply(f.field()), shared)));
    order.replaceAll(
        l -> {
          Map<WeedId, Long> of = hanging.get(l.field());
          return of == null ? l : l.hanging(Objects.requireNonNull(of.get(l.weed())));
        });
    order.sort(Leaning.WORST_FIRST);
  }
}
