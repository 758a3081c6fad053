package org.swathbook.rules;

import static org.swathbook.catalog.Position.BURNDOWN;
import static org.swathbook.catalog.Position.POST;
import static org.swathbook.catalog.Position.PRE;
import static org.swathbook.catalog.Position.PREPLANT;

import org.swathbook.catalog.Movement;
import org.swathbook.measure.Basis;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.IngredientBuilder;
import org.swathbook.testing.UseBuilder;

/** A field of soybean planted on 11 May and an invented active to spray on it. */
final class OneActive {
  private OneActive() {}

  static FieldBuilder soybean() {
    return FieldBuilder.of("C-1", "soybean", "2027-05-11").harvest("2027-10-01");
  }

  static IngredientBuilder active(UseBuilder... uses) {
    return active("testactive", uses);
  }

  static IngredientBuilder active(String name, UseBuilder... uses) {
    IngredientBuilder b =
        IngredientBuilder.of(name, 14, Movement.CONTACT, Basis.AI)
            .soil(0.5, 21, 1.0, 35, 12)
            .foliar(1);
    for (UseBuilder u : uses) {
      b.use(u);
    }
    return b;
  }

  static UseBuilder pre() {
    return UseBuilder.of("soybean", BURNDOWN, PREPLANT, PRE)
        .before("", "emergence")
        .traits()
        .rate("0.5-1.0 lb ai/acre")
        .plantingDays(0)
        .noSoilPh();
  }

  static UseBuilder post() {
    return UseBuilder.of("soybean", POST)
        .through("emergence", "")
        .noCropHeight()
        .traits()
        .rate("0.5-1.0 lb ai/acre")
        .noSoilPh();
  }
}
