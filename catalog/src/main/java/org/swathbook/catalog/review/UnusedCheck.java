package org.swathbook.catalog.review;

import java.time.LocalDate;
import java.util.List;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.WrittenCatalog;

/** Ingredients that no product brings: no plan will name them. */
final class UnusedCheck implements Check {
  @Override
  public List<Remark> remarks(WrittenCatalog catalog, LocalDate today) {
    return catalog.of(EntryKind.INGREDIENT).stream()
        .filter(
            e ->
                catalog.catalog().products().stream()
                    .noneMatch(
                        p ->
                            p.contents().stream()
                                .anyMatch(c -> c.ingredient().value().equals(e.id()))))
        .map(
            e ->
                Remark.advice(
                    e.mark(),
                    "no product brings " + e.text("name"),
                    "add one under products, so that plans can name it"))
        .toList();
  }
}
