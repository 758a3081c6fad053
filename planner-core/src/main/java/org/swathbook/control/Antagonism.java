package org.swathbook.control;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Interaction;
import org.swathbook.catalog.Weed;
import org.swathbook.program.Mix;

/**
 * A pair of a tank that takes control from one of the two on a weed, whether its size is known or
 * not.
 *
 * @param affected the active that loses
 */
public record Antagonism(Ingredient affected, Interaction how) {

  /** All of a tank on a weed: by active, then in the order of the catalog. */
  public static List<Antagonism> of(Mix mix, Weed weed, List<Interaction> known) {
    List<TankActive> actives = TankActive.of(mix);
    MixInteractions interactions = new MixInteractions(actives, known);
    List<Antagonism> out = new ArrayList<>();
    for (int a = 0; a < actives.size(); a++) {
      for (Interaction i : known) {
        if (interactions.weakens(i, a, weed)) {
          out.add(new Antagonism(actives.get(a).ingredient(), i));
        }
      }
    }
    return out;
  }
}
