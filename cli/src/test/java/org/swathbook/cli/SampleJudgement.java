package org.swathbook.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.DropletClass;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.TankTerms.AdjuvantNeed;
import org.swathbook.catalog.TankTerms.DropletRange;
import org.swathbook.check.BrokenHouseRule;
import org.swathbook.check.JudgedTank;
import org.swathbook.check.Judgement;
import org.swathbook.check.TankDroplets;
import org.swathbook.rules.About;
import org.swathbook.rules.Ask;
import org.swathbook.rules.Finding;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Verdict;
import org.swathbook.tank.UnmetNeed;

/** A judgement by hand with a warning, more questions than text shows, and a note. */
final class SampleJudgement {
  private SampleJudgement() {}

  static Judgement of(BrokenHouseRule... broken) {
    List<Ask> asks = new ArrayList<>();
    for (String active :
        List.of(
            "metribuzin",
            "flumioxazin",
            "2,4-D choline",
            "glufosinate-ammonium",
            "S-metolachlor",
            "clethodim",
            "atrazine",
            "mesotrione",
            "acetochlor")) {
      About about = About.PROGRAM.withIngredient(IngredientId.of(active));
      asks.add(ask("partner-refused", "list of tank partners", about));
      asks.add(ask("carrier-volume", "least spray volume", about));
    }
    List<Finding> findings =
        List.of(
            new Finding(
                new RuleId("layer-gap"),
                Severity.WARN,
                "In one year of three no layer holds Palmer amaranth from 13 Jun to 10 Jul, and 21.4 %"
                    + " of the season's emergence comes up in the gap.",
                "10 % in the worst one of five years",
                "21.4 %",
                "house rule maxExposedEmergence",
                "spray pass 2 by 1 Jun",
                About.PROGRAM.withWeed(Samples.PALMER).withPass(1)),
            new Finding(
                new RuleId("not-verified"),
                Severity.ASK,
                "18 limits that matter here are not known.",
                "",
                "",
                "",
                "look them up on the current labels",
                About.PROGRAM),
            new Finding(
                new RuleId("restricted-use"),
                Severity.NOTE,
                "No product of this program is known to be for certified applicators only.",
                "",
                "",
                "common practice, no source",
                "",
                About.PROGRAM.withProduct(ProductId.of("metribuzin-75wg"))));
    TankDroplets coarse =
        new TankDroplets(
            Optional.of(new DropletRange(DropletClass.COARSE, DropletClass.ULTRA_COARSE)),
            List.of("S-metolachlor"));
    TankDroplets none = new TankDroplets(Optional.empty(), List.of("clethodim"));
    TankDroplets free = new TankDroplets(Optional.empty(), List.of());
    return new Judgement(
        Verdict.of(findings),
        findings,
        asks,
        List.of(broken),
        List.of(
            new JudgedTank(free, List.of()),
            new JudgedTank(coarse, List.of(unmet())),
            new JudgedTank(none, List.of())));
  }

  private static UnmetNeed unmet() {
    return new UnmetNeed(
        Samples.CATALOG.findIngredient("S-metolachlor").orElseThrow(),
        new AdjuvantNeed(
            new LinkedHashSet<>(List.of(AdjuvantKind.CROP_OIL, AdjuvantKind.METHYLATED_SEED_OIL)),
            Optional.of("1 % v/v"),
            false),
        List.of("2,4-D choline", "glufosinate-ammonium"));
  }

  private static Ask ask(String rule, String what, About about) {
    return new Ask(new RuleId(rule), what, "the current label", about);
  }

  /** Of a tank on its day, about what lies beside the field. */
  static Finding downwind() {
    return new Finding(
        new RuleId("sensitive-neighbor"),
        Severity.BLOCK,
        "The wind blows toward the neighbor 'vineyard', 200 ft away.",
        "240 ft",
        "200 ft downwind",
        "the label's own buffer",
        "wind that blows away from it",
        About.PROGRAM
            .withIngredient(IngredientId.of("dicamba"))
            .withNeighbor("vineyard NE 200 ft"));
  }

  static BrokenHouseRule broken() {
    return new BrokenHouseRule(
        "maxExposedEmergence", Optional.of(Samples.PALMER), OptionalInt.empty(), 5, 9.2);
  }
}
