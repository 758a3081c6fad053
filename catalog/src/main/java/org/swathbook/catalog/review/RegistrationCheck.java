package org.swathbook.catalog.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.WrittenCatalog;

/** A registration by years that has run out, or runs out this year. */
final class RegistrationCheck implements Check {
  @Override
  public List<Remark> remarks(WrittenCatalog catalog, LocalDate today) {
    List<Remark> out = new ArrayList<>();
    for (Ingredient i : catalog.catalog().ingredients()) {
      for (Use u : i.uses()) {
        u.registration()
            .years()
            .find()
            .filter(y -> y.last() <= today.getYear())
            .flatMap(y -> catalog.find(EntryKind.INGREDIENT, i.id().value()))
            .ifPresent(
                e ->
                    out.add(
                        Remark.advice(
                            e.mark(),
                            "a use in "
                                + u.crop().map(Object::toString).orElse("any crop")
                                + " is registered until "
                                + u.registration().years().find().orElseThrow().last(),
                            "look up whether it goes on, and set labelYears")));
      }
    }
    return out;
  }
}
