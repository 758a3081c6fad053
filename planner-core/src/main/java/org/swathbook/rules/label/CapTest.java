package org.swathbook.rules.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.swathbook.book.Field;
import org.swathbook.catalog.Cap;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.ledger.LedgerEntry;
import org.swathbook.rules.LabelUses;
import org.swathbook.rules.SequenceFacts;

/**
 * A cap with what it counts.
 *
 * @param what the parent active or the form that is counted
 * @param counts the entries of the ledger that count against it, sub-caps apart
 */
public record CapTest(Cap cap, Source source, String what, Predicate<LedgerEntry> counts) {

  static List<CapTest> of(SequenceFacts facts, Ingredient i) {
    List<CapTest> tests = new ArrayList<>(ofSeason(facts.book().catalog(), facts.field(), i));
    List<LabelUses.Of> own = own(group(facts.book().catalog(), facts.field(), i), i);
    List<LabelUses.Of> here =
        own.stream().filter(o -> LabelUses.isIn(o.use(), facts.positions())).toList();
    for (CapTest t :
        widest(
            here,
            i.name(),
            e -> e.active().ingredient().id().equals(i.id()) && isHere(e, facts.positions()))) {
      addIfStricter(tests, t);
    }
    return tests;
  }

  /** Caps that hold on a field whatever is sprayed when: those of the parent, and stricter own. */
  public static List<CapTest> ofSeason(Catalog catalog, Field field, Ingredient i) {
    List<LabelUses.Of> group = group(catalog, field, i);
    List<CapTest> tests =
        new ArrayList<>(widest(group, i.capGroup(), e -> e.capGroup().equals(i.capGroup())));
    for (CapTest t :
        widest(own(group, i), i.name(), e -> e.active().ingredient().id().equals(i.id()))) {
      addIfStricter(tests, t);
    }
    return List.copyOf(tests);
  }

  private static List<LabelUses.Of> group(Catalog catalog, Field field, Ingredient i) {
    return ofTheCrop(LabelUses.ofGroup(catalog, i.capGroup(), field));
  }

  private static List<LabelUses.Of> own(List<LabelUses.Of> group, Ingredient i) {
    List<LabelUses.Of> out = new ArrayList<>();
    for (LabelUses.Of o : group) {
      if (o.ingredient().id().equals(i.id())) {
        out.add(o);
      }
    }
    return List.copyOf(out);
  }

  /**
   * A use on any ground (stubble, fall) lends its cap only to an active that the label does not
   * name for the crop: what a label allows on stubble is no leave to spray as much in corn.
   */
  private static List<LabelUses.Of> ofTheCrop(List<LabelUses.Of> uses) {
    List<LabelUses.Of> out = new ArrayList<>();
    for (LabelUses.Of o : uses) {
      if (o.use().crop().isPresent() || !namesTheCrop(uses, o.ingredient())) {
        out.add(o);
      }
    }
    return List.copyOf(out);
  }

  private static boolean namesTheCrop(List<LabelUses.Of> uses, Ingredient i) {
    for (LabelUses.Of n : uses) {
      if (n.use().crop().isPresent() && n.ingredient().id().equals(i.id())) {
        return true;
      }
    }
    return false;
  }

  /** Only a smaller cap adds anything to those that count at least the same entries. */
  private static void addIfStricter(List<CapTest> tests, CapTest t) {
    for (CapTest w : tests) {
      boolean same = w.cap().per() == t.cap().per() && w.cap().counts().equals(t.cap().counts());
      if (same && !(t.cap().amount().kgPerHa() < w.cap().amount().kgPerHa())) {
        return;
      }
    }
    tests.add(t);
  }

  /** The largest cap of each period and set of positions. */
  private static List<CapTest> widest(
      List<LabelUses.Of> uses, String what, Predicate<LedgerEntry> counts) {
    List<CapTest> out = new ArrayList<>();
    for (LabelUses.Of o : uses) {
      if (o.use().caps() instanceof Stated.Value<List<Cap>> caps) {
        for (Cap cap : caps.value()) {
          CapTest t = new CapTest(cap, caps.source(), what, counts);
          int same = indexOfSameKind(out, cap);
          if (same < 0) {
            out.add(t);
          } else if (out.get(same).cap().amount().kgPerHa() < cap.amount().kgPerHa()) {
            out.set(same, t);
          }
        }
      }
    }
    return out;
  }

  private static int indexOfSameKind(List<CapTest> tests, Cap cap) {
    for (int i = 0; i < tests.size(); i++) {
      Cap c = tests.get(i).cap();
      if (c.per() == cap.per() && c.counts().equals(cap.counts())) {
        return i;
      }
    }
    return -1;
  }

  /** Whether an entry belongs to the same part of the season; one that does not say, does. */
  private static boolean isHere(LedgerEntry e, Set<Position> positions) {
    return e.positions().isEmpty() || e.positions().stream().anyMatch(positions::contains);
  }
}
