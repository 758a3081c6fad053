package org.swathbook.catalog.starter;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.StateLimit;
import org.swathbook.catalog.Use;

/** The uses of the starter that a published limit speaks of. */
final class MatchingUses {

  private MatchingUses() {}

  /** Uses that are allowed at all, of the limit's crops, positions and formulation. */
  static List<Use> of(PublishedLimit limit, Ingredient ingredient) {
    Set<Position> wanted = positions(limit.position());
    return ingredient.uses().stream()
        .filter(u -> !u.refused())
        .filter(u -> u.positions().stream().anyMatch(wanted::contains))
        .filter(u -> limit.crops().isEmpty() || isForOneOf(u, limit.crops()))
        .filter(u -> u.formulations().isEmpty() || isOfFormulation(u, limit))
        .filter(u -> limit.method().map(u::isBy).orElse(true))
        .filter(u -> isRateAllowed(u, limit))
        .filter(u -> limit.states().isEmpty() || limit.states().stream().anyMatch(s -> isIn(u, s)))
        .toList();
  }

  /** The verdict on every one of them together. */
  static Verdict every(PublishedLimit limit, Ingredient ingredient, Function<Use, Verdict> judge) {
    return Verdict.every(of(limit, ingredient).stream().map(judge).toList());
  }

  private static boolean isForOneOf(Use use, List<String> crops) {
    return crops.stream().anyMatch(c -> use.isFor(CropId.of(c)));
  }

  private static boolean isOfFormulation(Use use, PublishedLimit limit) {
    return limit.formulation().map(use.formulations()::contains).orElse(true);
  }

  /** A use whose rates end below those that the limit speaks of does not allow them. */
  static boolean isRateAllowed(Use use, PublishedLimit limit) {
    return limit.rate().isEmpty()
        || use.rates().find().isEmpty()
        || use.rates().find().get().stream()
            .flatMap(r -> r.rates().stream())
            .anyMatch(r -> limit.rate().get().reaches(r.high()));
  }

  static boolean isIn(Use use, String state) {
    StateLimit states = use.registration().states();
    return (states.only().isEmpty() || states.only().contains(state))
        && !states.refused().contains(state);
  }

  /** Guides draw these lines less finely than the catalog does. */
  private static Set<Position> positions(String word) {
    return switch (word) {
      case "any" -> EnumSet.allOf(Position.class);
      case "burndown", "failed-stand" -> EnumSet.of(Position.BURNDOWN, Position.PREPLANT);
      case "ppi" -> EnumSet.of(Position.PREPLANT);
      case "pre" -> EnumSet.of(Position.PREPLANT, Position.PRE);
      case "post", "lay-by" -> EnumSet.of(Position.POST, Position.LAY_BY);
      case "harvest-aid" -> EnumSet.of(Position.HARVEST_AID);
      default -> throw new IllegalArgumentException("no position '" + word + "'");
    };
  }
}
