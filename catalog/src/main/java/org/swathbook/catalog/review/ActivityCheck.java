package org.swathbook.catalog.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.WrittenCatalog;
import org.swathbook.catalog.file.WrittenEntry;

/** An active that is said to do nothing through soil or leaves and still has ratings for it. */
final class ActivityCheck implements Check {
  @Override
  public List<Remark> remarks(WrittenCatalog catalog, LocalDate today) {
    List<Remark> out = new ArrayList<>();
    for (Ingredient i : catalog.catalog().ingredients()) {
      Optional<WrittenEntry> entry = catalog.find(EntryKind.INGREDIENT, i.id().value());
      List<Response> effective =
          catalog.catalog().responses().stream()
              .filter(r -> r.ingredient().equals(i.id()) && r.emaxPct() > 0)
              .toList();
      long soil = effective.stream().filter(r -> r.timing() == Response.Timing.PRE).count();
      long leaf = effective.size() - soil;
      if (entry.isPresent() && soil > 0 && i.residual().isNone()) {
        out.add(
            Remark.error(
                entry.get().mark(),
                i.name() + " has no soil activity and " + soil + " ratings before emergence",
                "state its residual under soil, or rate it 0"));
      }
      if (entry.isPresent() && leaf > 0 && i.foliar().isNone()) {
        out.add(
            Remark.error(
                entry.get().mark(),
                i.name()
                    + " does nothing through leaves and has "
                    + leaf
                    + " ratings after emergence",
                "state its rain-free time under foliar, or rate it 0"));
      }
    }
    return out;
  }
}
