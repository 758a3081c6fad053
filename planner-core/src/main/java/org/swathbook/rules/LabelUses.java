package org.swathbook.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.book.Field;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Method;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Trait;
import org.swathbook.catalog.Use;
import org.swathbook.growth.UseFinder;

/** Uses of a label that concern a field. */
public final class LabelUses {
  private LabelUses() {}

  /** An ingredient with one of its uses. */
  public record Of(Ingredient ingredient, Use use) {}

  /** Uses that are not refused, of a crop, in the order of the catalog. */
  public static List<Use> inCrop(Ingredient ingredient, Field field) {
    List<Use> out = new ArrayList<>();
    for (Use u : ingredient.uses()) {
      if (!u.refused() && u.isFor(field.crop())) {
        out.add(u);
      }
    }
    return List.copyOf(out);
  }

  /** Whether the crop of a field may be sprayed over the top with an active while it stands. */
  public static boolean isTolerated(Ingredient active, Field field) {
    return inCrop(active, field).stream()
        .anyMatch(
            u ->
                u.isIn(Position.Phase.IN_CROP)
                    && u.isBy(Method.BROADCAST)
                    && hasTraits(u, field)
                    && !u.isHarvestAid());
  }

  /** Whether a use may be made in one of these positions. */
  public static boolean isIn(Use use, Set<Position> positions) {
    for (Position p : use.positions()) {
      if (positions.contains(p)) {
        return true;
      }
    }
    return false;
  }

  /** Positions in words: {@code before emergence}. */
  public static String when(Set<Position> positions) {
    return switch (phase(positions)) {
      case BEFORE_EMERGENCE -> "before emergence";
      case IN_CROP -> "after emergence";
      case AFTER_HARVEST -> "after harvest";
    };
  }

  /** Those for a broadcast pass in one part of the crop's life, in any state. */
  public static List<Use> fitting(
      Ingredient ingredient, Field field, Set<Position> positions, String formulation) {
    return fitting(ingredient, field, positions, formulation, Method.BROADCAST);
  }

  /** Those for a pass in one part of the crop's life, for one formulation, in any state. */
  public static List<Use> fitting(
      Ingredient ingredient,
      Field field,
      Set<Position> positions,
      String formulation,
      Method method) {
    Position.Phase phase = phase(positions);
    List<Use> out = new ArrayList<>();
    for (Use u : inCrop(ingredient, field)) {
      if (u.isIn(phase)
          && u.isBy(method)
          && (u.formulations().isEmpty() || u.formulations().contains(formulation))) {
        out.add(u);
      }
    }
    return List.copyOf(out);
  }

  /** Positions of one day all lie in one part of the crop's life. */
  public static Position.Phase phase(Set<Position> positions) {
    return positions.iterator().next().phase();
  }

  /**
   * Uses of all forms of a parent active that the field's crop, traits and state leave open. A
   * trait that is not known to be there counts as missing.
   */
  public static List<Of> ofGroup(Catalog catalog, String capGroup, Field field) {
    List<Of> out = new ArrayList<>();
    for (Ingredient i : catalog.ofCapGroup(capGroup)) {
      for (Use u : inCrop(i, field)) {
        if (u.isBy(Method.BROADCAST) && hasTraits(u, field) && UseFinder.mayBeIn(u, field)) {
          out.add(new Of(i, u));
        }
      }
    }
    return List.copyOf(out);
  }

  /** Whether the field is known to have every trait that a use needs. */
  public static boolean hasTraits(Use use, Field field) {
    Optional<Set<Trait>> needed = use.traits().find();
    return needed.isEmpty()
        || field.traits().isPresent() && field.traits().get().containsAll(needed.get());
  }
}
