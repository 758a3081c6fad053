package org.swathbook.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Product;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Dose;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;

/** A site of action that a program uses more than once, and so each active used more than once. */
public record SharedSite(int site, List<Use> uses) {

  /** One use of the site; {@code pass} from 1. */
  public record Use(int pass, Product product, Ingredient ingredient) {}

  public SharedSite {
    uses = List.copyOf(uses);
  }

  /** Sites with two uses or more, by number; uses in the order of the passes. */
  public static List<SharedSite> of(SeasonOutcome outcome) {
    Map<Integer, List<Use>> bySite = new TreeMap<>();
    for (PassOutcome p : outcome.passes()) {
      for (Dose d : p.mix().doses()) {
        for (ActiveDose a : d.actives()) {
          bySite
              .computeIfAbsent(a.ingredient().site().number(), s -> new ArrayList<>())
              .add(new Use(p.index() + 1, d.product(), a.ingredient()));
        }
      }
    }
    return bySite.entrySet().stream()
        .filter(e -> e.getValue().size() > 1)
        .map(e -> new SharedSite(e.getKey(), e.getValue()))
        .toList();
  }

  /**
   * {@code site 14: flumioxazin in flumioxazin-51wg (pass 1), fomesafen in fomesafen-2sl (pass 2)}.
   */
  public String words() {
    return "site "
        + site
        + ": "
        + String.join(
            ", ",
            uses.stream()
                .map(
                    u ->
                        u.ingredient().name()
                            + " in "
                            + u.product().id()
                            + " (pass "
                            + u.pass()
                            + ")")
                .toList());
  }
}
