package org.swathbook.book;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Site;

/**
 * Plants of a weed that a site, or one ingredient only, no longer controls, or controls in part.
 *
 * @param site the site; empty when only an ingredient is listed
 * @param share share of the plants, 0 to 1
 * @param status confirmed, assumed or suspected, as written
 * @param kept what the plants still feel of it; empty when the book does not say
 */
public record Resistance(
    Optional<Site> site,
    Optional<IngredientId> ingredient,
    double share,
    String status,
    Optional<Kept> kept) {

  /** Shares of the control through leaves and through the soil that are left, not both all. */
  public record Kept(double leaf, double soil) {

    public static final Kept NOTHING = new Kept(0, 0);

    /**
     * Faster breakdown of an active in the plant: half is left (default, the middle of 0.3 to 0.7).
     */
    public static final Kept METABOLIC = new Kept(0.5, 0.5);

    public Kept {
      if (!(leaf >= 0 && leaf <= 1 && soil >= 0 && soil <= 1 && leaf + soil < 2)) {
        throw new IllegalArgumentException("a resistant plant keeps less than all of the control");
      }
    }
  }

  public Resistance {
    if (site.isPresent() == ingredient.isPresent()) {
      throw new IllegalArgumentException(
          "a resistance is to a site or to an ingredient, one of them");
    }
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("a share is between 0 and 1, not " + share);
    }
  }

  // Written out, as in every key that is hashed at a start: see RuleId.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Resistance o
        && site.equals(o.site)
        && ingredient.equals(o.ingredient)
        && Double.compare(share, o.share) == 0
        && status.equals(o.status)
        && kept.equals(o.kept);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * site.hashCode() + ingredient.hashCode()) + status.hashCode();
  }

  /** A resistance of which the book does not say how much control is left. */
  public Resistance(
      Optional<Site> site, Optional<IngredientId> ingredient, double share, String status) {
    this(site, ingredient, share, status, Optional.empty());
  }

  private static final String WATCHED = "watched";

  /**
   * A suspicion that somebody noted and nobody tested. How many plants it is, is not known: no
   * share of them is walked as resistant, but the site no longer counts as one that works.
   */
  public static Resistance watched(Site site, Optional<LocalDate> since) {
    return new Resistance(
        Optional.of(site),
        Optional.empty(),
        0,
        WATCHED + since.map(day -> " since " + day).orElse(""));
  }

  /** Whether it is only watched, as {@link #watched}. */
  public boolean isWatched() {
    return share == 0 && status.startsWith(WATCHED);
  }

  /** Whether it concerns an active. */
  public boolean concerns(org.swathbook.catalog.Ingredient active) {
    // Asked of every dose on every weed of thousands of fields: without closures.
    return site.isPresent()
        ? site.get().equals(active.site())
        : ingredient.isPresent() && ingredient.get().equals(active.id());
  }
}
