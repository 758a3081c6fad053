package org.swathbook.catalog;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a label says of the tank: adjuvants, partners, droplets, clean-out.
 *
 * @param adjuvantNeeded every entry must be met
 * @param partners none when the label keeps no list of partners
 * @param nozzlesListed true when only nozzles that the label or its website lists may be used
 * @param jarTestRefused true when the label forbids the test
 */
public record TankTerms(
    Stated<List<AdjuvantNeed>> adjuvantNeeded,
    Stated<Set<AdjuvantKind>> adjuvantRefused,
    Stated<PartnerList> partners,
    Stated<DropletRange> droplets,
    Stated<Boolean> nozzlesListed,
    Stated<InsecticideLimit> insecticides,
    Stated<Boolean> jarTestRefused,
    Stated<CleanOut> cleanOut) {

  /**
   * An adjuvant that the label asks for; any one of these kinds will do, each at its own rate.
   *
   * @param anyOf the kind the label names first stands first
   * @param rates by kind, as written, {@code 8.5 lb/100 gal}; of every kind, or of none where the
   *     label names none
   * @param refusedWithout the label forbids to spray without it, else it only advises
   */
  public record AdjuvantNeed(
      Set<AdjuvantKind> anyOf, Map<AdjuvantKind, String> rates, boolean refusedWithout) {

    public AdjuvantNeed {
      anyOf = Ordered.set(anyOf);
      rates = Ordered.map(rates);
      if (!rates.isEmpty() && !rates.keySet().equals(anyOf)) {
        throw new IllegalArgumentException("rates of " + rates.keySet() + " for " + anyOf);
      }
    }

    /** Of kinds that all go at one rate; empty when the label names none. */
    public AdjuvantNeed(Set<AdjuvantKind> anyOf, Optional<String> rate, boolean refusedWithout) {
      this(anyOf, same(anyOf, rate), refusedWithout);
    }

    private static Map<AdjuvantKind, String> same(Set<AdjuvantKind> kinds, Optional<String> rate) {
      Map<AdjuvantKind, String> out = new LinkedHashMap<>();
      rate.ifPresent(r -> kinds.forEach(k -> out.put(k, r)));
      return out;
    }

    /** The rate of one of its kinds as written; empty when the label names none. */
    public Optional<String> rate(AdjuvantKind kind) {
      return Optional.ofNullable(rates.get(kind));
    }

    /** Whether one rate, or none, stands for all its kinds. */
    public boolean isAtOneRate() {
      return anyOf.stream().map(this::rate).distinct().count() <= 1;
    }

    // Written out, as in every key that is hashed at a start: see IngredientId.
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof AdjuvantNeed o
          && anyOf.equals(o.anyOf)
          && rates.equals(o.rates)
          && refusedWithout == o.refusedWithout;
    }

    @Override
    public int hashCode() {
      return 31 * anyOf.hashCode() + rates.hashCode();
    }
  }

  /**
   * Partners in one tank.
   *
   * @param only the listed alone are allowed, else the listed are refused
   */
  public record PartnerList(boolean only, Set<IngredientId> listed) {

    public PartnerList {
      listed = Ordered.set(listed);
    }

    public boolean allows(IngredientId partner) {
      return only == listed.contains(partner);
    }
  }

  /** Droplet classes from the finest to the coarsest allowed, both inside. */
  public record DropletRange(DropletClass finest, DropletClass coarsest) {

    public boolean allows(DropletClass chosen) {
      return chosen.compareTo(finest) >= 0 && chosen.compareTo(coarsest) <= 0;
    }

    /** Whether there is a class that both allow. */
    public boolean meets(DropletRange other) {
      return finest.compareTo(other.coarsest) <= 0 && other.finest.compareTo(coarsest) <= 0;
    }
  }

  /**
   * Classes of insecticides ({@code organophosphate}) that are refused, or may injure.
   *
   * @param foliarWaitDays days to wait after one of them went over the leaves of the crop; empty
   *     where the label gives none, then it holds all season as it does after one in the soil
   */
  public record InsecticideLimit(
      Set<String> refused, Set<String> caution, OptionalInt foliarWaitDays) {

    public InsecticideLimit {
      refused = Ordered.set(refused);
      caution = Ordered.set(caution);
    }
  }

  /** Least clean-out before crops that traces of the active injure are sprayed. */
  public record CleanOut(Rinse least, Set<CropId> sensitive) {

    public CleanOut {
      sensitive = Ordered.set(sensitive);
    }
  }

  /** Ways to clean a sprayer, each more than the one before. */
  public enum Rinse {
    WATER_RINSE("water-rinse"),
    TRIPLE_RINSE("triple-rinse"),
    CLEANER("cleaner");

    private final String spelling;

    Rinse(String spelling) {
      this.spelling = spelling;
    }

    public String spelling() {
      return spelling;
    }
  }
}
