package org.swathbook.catalog.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.Weed;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.WrittenCatalog;

/** Weeds whose answer to an active is unknown; every plan that needs it will ask. */
final class UnratedCheck implements Check {
  @Override
  public List<Remark> remarks(WrittenCatalog catalog, LocalDate today) {
    List<Remark> out = new ArrayList<>();
    for (Ingredient i : catalog.catalog().ingredients()) {
      for (Response.Timing t : timings(i)) {
        List<String> unrated = unrated(catalog.catalog(), i, t);
        if (!unrated.isEmpty()) {
          catalog
              .find(EntryKind.INGREDIENT, i.id().value())
              .ifPresent(
                  e ->
                      out.add(
                          Remark.advice(
                              e.mark(),
                              "its control is not known, "
                                  + t.name().toLowerCase(Locale.ROOT)
                                  + ", of "
                                  + (unrated.size() == catalog.catalog().weeds().size()
                                      ? "any weed"
                                      : String.join(", ", unrated)),
                              "add rows to responses.csv; 0 only where it is known to do nothing")));
        }
      }
    }
    return out;
  }

  /** The timings at which its labels let it meet weeds. */
  private static Set<Response.Timing> timings(Ingredient i) {
    Set<Response.Timing> out = EnumSet.noneOf(Response.Timing.class);
    for (Use u : i.uses()) {
      if (u.refused()) {
        continue;
      }
      boolean leaves = u.terms().foliar().find().isPresent();
      if (i.hasSoilActivity() && u.isIn(Position.Phase.BEFORE_EMERGENCE)) {
        out.add(Response.Timing.PRE);
      }
      if (leaves && u.isIn(Position.Phase.IN_CROP)) {
        out.add(Response.Timing.POST);
      }
      if (leaves && u.positions().contains(Position.BURNDOWN)) {
        out.add(Response.Timing.BURNDOWN);
      }
    }
    return out;
  }

  private static List<String> unrated(Catalog catalog, Ingredient i, Response.Timing t) {
    return catalog.weeds().stream()
        .filter(w -> catalog.response(w.id(), i.id(), t).isUnknown())
        .map(Weed::name)
        .toList();
  }
}
