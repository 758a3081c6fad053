package org.swathbook.catalog.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Slug;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.WrittenCatalog;

/**
 * Forms of one active must share its site of action and the basis in which their cap is counted.
 */
final class SiblingCheck implements Check {
  @Override
  public List<Remark> remarks(WrittenCatalog catalog, LocalDate today) {
    List<Remark> out = new ArrayList<>();
    TreeMap<String, Ingredient> firstOfGroup = new TreeMap<>();
    for (Ingredient i : catalog.catalog().ingredients()) {
      Ingredient first = firstOfGroup.putIfAbsent(Slug.of(i.capGroup()), i);
      if (first == null) {
        continue;
      }
      if (!first.site().equals(i.site()) || first.rateBasis() != i.rateBasis()) {
        add(
            catalog,
            i,
            i.name()
                + " shares the caps of "
                + first.name()
                + " but not its site or the basis of its rates",
            "correct site or rateBasis, or give it a capGroup of its own",
            out);
      }
      if (!first.capGroup().equals(i.capGroup())) {
        add(
            catalog,
            i,
            "the capGroup '" + i.capGroup() + "' is spelled otherwise than that of " + first.name(),
            "write it '" + first.capGroup() + "', or the two are counted apart",
            out);
      }
    }
    return out;
  }

  private static void add(
      WrittenCatalog catalog, Ingredient i, String what, String right, List<Remark> out) {
    catalog
        .find(EntryKind.INGREDIENT, i.id().value())
        .ifPresent(e -> out.add(Remark.error(e.mark(), what, right)));
  }
}
