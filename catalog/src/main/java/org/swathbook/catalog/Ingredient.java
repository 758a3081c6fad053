package org.swathbook.catalog;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.swathbook.measure.Basis;

/**
 * An active ingredient in one form (2,4-D choline and 2,4-D ester are two).
 *
 * @param capGroup the parent acid or active whose caps, counts and intervals it shares
 * @param usesComplete a crop that is not among the uses is known to be not labelled
 * @param terms what holds in every use that does not replace it
 * @param rotation next-crop intervals by crop; a missing crop is unknown
 * @param sources by path, of the values that keep no source of their own, {@code site}, {@code
 *     uses.2.state}, the second use's
 */
public record Ingredient(
    IngredientId id,
    String name,
    List<String> aliases,
    Site site,
    String family,
    Basis rateBasis,
    Movement movement,
    String capGroup,
    Stated<Residual> residual,
    Stated<Double> halfLifeDays,
    List<Use> uses,
    boolean usesComplete,
    Map<CropId, Stated<List<RotationRow>>> rotation,
    Terms terms,
    Optional<String> incorporation,
    Map<String, Source> sources,
    LocalDate reviewed) {

  public Ingredient {
    aliases = List.copyOf(aliases);
    uses = List.copyOf(uses);
    rotation = Ordered.map(rotation);
    sources = Ordered.map(sources);
  }

  /** Of the id alone: equal ones share it, and all that a label says takes long to hash. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }

  /** Activity through leaves, where a use does not say otherwise. */
  public Stated<Foliar> foliar() {
    return terms.foliar();
  }

  public boolean hasSoilActivity() {
    return residual.find().isPresent();
  }

  public boolean hasFoliarActivity() {
    return foliar().find().isPresent();
  }

  /** Whether survivors are set back as by a contact active (sites 6, 10, 14 and 22). */
  public boolean isContact() {
    return movement == Movement.CONTACT;
  }

  public Stated<List<RotationRow>> rotationTo(CropId next) {
    Stated<List<RotationRow>> s = rotation.get(next);
    return s != null ? s : Stated.unknown("interval before " + next);
  }
}
