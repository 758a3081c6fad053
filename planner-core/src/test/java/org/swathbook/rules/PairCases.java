package org.swathbook.rules;

import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.file.CatalogLoader;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;

/** Examples of the rules on two partners of one tank, from the starter catalog. */
final class PairCases {
  private static final Catalog STARTER = new CatalogLoader().starter();

  private PairCases() {}

  static List<RuleCase> all() {
    return List.of(
        of(
            true,
            "droplet-class",
            "dicamba over the top (extremely coarse to ultra coarse) with glufosinate (medium to coarse)",
            over("dicamba", "soybean"),
            over("glufosinate-ammonium", "soybean")),
        of(
            false,
            "droplet-class",
            "2,4-D choline with glyphosate",
            over("2,4-D choline", "soybean"),
            over("glyphosate", "soybean")),
        of(
            true,
            "partner-refused",
            "quizalofop with 2,4-D choline in tolerant sorghum",
            over("quizalofop-P-ethyl", "grain-sorghum"),
            over("2,4-D choline", "soybean")),
        of(
            false,
            "partner-refused",
            "glyphosate with glufosinate",
            over("glyphosate", "soybean"),
            over("glufosinate-ammonium", "soybean")));
  }

  private static RuleCase of(
      boolean trips, String rule, String example, ActiveUse first, ActiveUse second) {
    return new RuleCase(
        rule,
        trips,
        example,
        () -> {
          Findings out = Findings.all();
          PairRule judge = (PairRule) RuleBook.find(rule).orElseThrow();
          judge.judge(first, second, About.PROGRAM.withPass(0), out);
          return out.sorted();
        });
  }

  /** An active over the crop, by the last of its uses there. */
  private static ActiveUse over(String name, String crop) {
    Ingredient i = STARTER.findIngredient(name).orElseThrow();
    Optional<Use> use =
        i.uses().stream()
            .filter(u -> u.crop().filter(c -> c.value().equals(crop)).isPresent())
            .filter(u -> !u.refused() && u.isIn(Position.Phase.IN_CROP))
            .reduce((a, b) -> b);
    Product p = STARTER.singles(i.id()).get(0);
    Dose dose = Doses.ofProduct(STARTER, p, p.spoken());
    return new ActiveUse(dose, dose.actives().get(0), Optional.of(use.orElseThrow()));
  }
}
