package org.swathbook.control;

import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Residual;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Weed;

/** How an active works on a weed, as far as the catalog knows; empty is unknown, never nothing. */
final class Responses {
  private Responses() {}

  /** The curve through leaves in a phase; control 0 where the active is known not to act so. */
  static Optional<FoliarCurve> foliar(
      Catalog catalog, Ingredient active, Weed weed, Position.Phase phase) {
    boolean contact = isContactSite(active);
    double defaultHeight = contact ? FoliarCurve.CONTACT_HEIGHT_CM : FoliarCurve.SYSTEMIC_HEIGHT_CM;
    double gamma = contact ? FoliarCurve.CONTACT_GAMMA : FoliarCurve.SYSTEMIC_GAMMA;
    if (active.foliar().isNone()) {
      return Optional.of(new FoliarCurve(0, defaultHeight, gamma));
    }
    Response.Timing first =
        phase == Position.Phase.IN_CROP ? Response.Timing.POST : Response.Timing.BURNDOWN;
    Response.Timing second =
        phase == Position.Phase.IN_CROP ? Response.Timing.BURNDOWN : Response.Timing.POST;
    return catalog
        .response(weed.id(), active.id(), first)
        .find()
        .or(() -> catalog.response(weed.id(), active.id(), second).find())
        .map(
            r ->
                new FoliarCurve(
                    r.emaxPct() / 100, rated(r.controlHeightCm(), defaultHeight), gamma));
  }

  private static double rated(OptionalDouble height, double otherwise) {
    return height.isPresent() && height.getAsDouble() > 0 ? height.getAsDouble() : otherwise;
  }

  /** Sites 6, 10, 14 and 22 act where they land. */
  static boolean isContactSite(Ingredient active) {
    return switch (active.site().number()) {
      case 6, 10, 14, 22 -> true;
      default -> false;
    };
  }

  /** Fresh control through the soil, 0 to 1; 0 where the active is known not to act so. */
  static OptionalDouble fresh(Catalog catalog, Ingredient active, Weed weed) {
    Stated<Residual> residual = active.residual();
    if (residual.isNone()) {
      return OptionalDouble.of(0);
    }
    Optional<Residual> r = residual.find();
    Optional<Response> response =
        catalog.response(weed.id(), active.id(), Response.Timing.PRE).find();
    return r.isPresent() && response.isPresent()
        ? OptionalDouble.of(FadeCurve.fresh(response.get().emaxPct(), r.get()))
        : OptionalDouble.empty();
  }

  static boolean isCoarse(org.swathbook.book.Field field) {
    return field.soilTextures().stream()
        .anyMatch(t -> t.group() == org.swathbook.catalog.SoilTexture.Group.COARSE);
  }
}
