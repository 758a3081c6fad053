package org.swathbook.season;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.catalog.Ingredient;
import org.swathbook.measure.Rate;
import org.swathbook.program.Anchor;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.FieldId;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.testing.Fixtures;

/** Short ways to write mixes and programs in tests. */
final class Sprays {
  private Sprays() {}

  static Dose dose(String active, double lbPerAcre) {
    Ingredient i = Fixtures.active(active);
    return Doses.ofIngredient(
        i, Fixtures.catalog().singles(i.id()).get(0), Rate.lbPerAcre(lbPerAcre, i.rateBasis()));
  }

  /** {@code "flumioxazin", 0.08, "metribuzin", 0.38}. */
  static Mix mix(Object... activesAndRates) {
    List<Dose> doses = new ArrayList<>();
    for (int i = 0; i < activesAndRates.length; i += 2) {
      doses.add(dose((String) activesAndRates[i], ((Number) activesAndRates[i + 1]).doubleValue()));
    }
    return Mix.of(doses);
  }

  static Pass pass(int daysFromPlanting, Mix mix) {
    return new Pass(new Anchor.FromPlanting(daysFromPlanting), mix);
  }

  static Program program(String field, Pass... passes) {
    return new Program("test", new FieldId(field), List.of(passes));
  }
}
