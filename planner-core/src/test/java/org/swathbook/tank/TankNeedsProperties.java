package org.swathbook.tank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Movement;
import org.swathbook.catalog.TankTerms.AdjuvantNeed;
import org.swathbook.catalog.file.CatalogLoader;
import org.swathbook.measure.Basis;
import org.swathbook.program.Adjuvant;
import org.swathbook.testing.IngredientBuilder;

/**
 * Laws of what partners ask for together: invented partners, and all uses of the starter catalog.
 */
class TankNeedsProperties {
  private static final List<Partner> STARTER =
      new CatalogLoader()
          .starter().ingredients().stream()
              .flatMap(
                  i ->
                      Stream.concat(
                          Stream.of(new Partner(i, i.terms())),
                          i.uses().stream().map(u -> new Partner(i, u.terms()))))
              .toList();

  private static final List<String> RATES =
      List.of(
          "0.25 % v/v", "1 % v/v", "1-2 pt/acre", "1 qt/acre", "8.5 lb/100 gal", "17 lb/100 gal");

  /** A need: kinds in an order of their own, and at least as many rates. */
  private record Need(List<AdjuvantKind> kinds, List<String> rates) {
    String[] eachAtItsRate() {
      String[] out = new String[kinds.size() * 2];
      for (int k = 0; k < kinds.size(); k++) {
        out[2 * k] = kinds.get(k).spelling();
        out[2 * k + 1] = rates.get(k);
      }
      return out;
    }
  }

  @Provide
  Arbitrary<List<Partner>> invented() {
    Arbitrary<List<AdjuvantKind>> kinds =
        Arbitraries.of(AdjuvantKind.values()).list().uniqueElements().ofMinSize(1).ofMaxSize(3);
    Arbitrary<Need> need =
        Combinators.combine(kinds, Arbitraries.of(RATES).list().ofSize(3)).as(Need::new);
    Arbitrary<List<AdjuvantKind>> refused =
        Arbitraries.of(AdjuvantKind.values()).list().uniqueElements().ofMaxSize(2);
    Arbitrary<IngredientBuilder> active =
        Combinators.combine(need.list().ofMaxSize(2), refused).as(TankNeedsProperties::active);
    return active
        .list()
        .ofMaxSize(4)
        .map(
            list ->
                list.stream()
                    .map(IngredientBuilder::build)
                    .map((Ingredient i) -> new Partner(i, i.terms()))
                    .toList());
  }

  private static IngredientBuilder active(List<Need> needs, List<AdjuvantKind> refused) {
    String name = "active-" + Integer.toHexString(needs.hashCode() ^ refused.hashCode());
    IngredientBuilder b = IngredientBuilder.of(name, 14, Movement.CONTACT, Basis.AI).foliar(1);
    needs.forEach(n -> b.needsEach(n.eachAtItsRate()));
    return b.refuses(spellings(refused));
  }

  private static String[] spellings(List<AdjuvantKind> kinds) {
    return kinds.stream().map(AdjuvantKind::spelling).toArray(String[]::new);
  }

  @Provide
  Arbitrary<List<Partner>> starter() {
    return Arbitraries.of(STARTER).list().ofMaxSize(5);
  }

  @Property
  void theOrderOfInventedPartnersChangesNothing(
      @ForAll("invented") List<Partner> partners, @ForAll long seed) {
    assertOrderChangesNothing(partners, seed);
  }

  @Property
  void theOrderOfPartnersOfTheStarterChangesNothing(
      @ForAll("starter") List<Partner> partners, @ForAll long seed) {
    assertOrderChangesNothing(partners, seed);
  }

  private static void assertOrderChangesNothing(List<Partner> partners, long seed) {
    List<Partner> shuffled = new ArrayList<>(partners);
    Collections.shuffle(shuffled, new Random(seed));

    assertThat(TankNeeds.of(shuffled)).isEqualTo(TankNeeds.of(partners));
  }

  @Property
  void everyNeedIsMetAtItsRateOrSaidToBeUnmet(@ForAll("invented") List<Partner> partners) {
    TankNeeds needs = TankNeeds.of(partners);
    for (Partner p : partners) {
      for (AdjuvantNeed need : p.terms().tank().adjuvantNeeded().find().orElse(List.of())) {
        boolean unmet =
            needs.unmet().stream()
                .anyMatch(u -> u.of().id().equals(p.ingredient().id()) && u.need().equals(need));
        assertThat(needs.adjuvants().stream().anyMatch(a -> meets(a, need))).isNotEqualTo(unmet);
      }
    }
  }

  private static boolean meets(Adjuvant a, AdjuvantNeed need) {
    AdjuvantKind kind = AdjuvantKind.find(a.kind()).orElseThrow();
    if (!need.anyOf().contains(kind)) {
      return false;
    }
    AdjuvantRate asked = AdjuvantRate.of(need.rate(kind).orElseThrow());
    AdjuvantRate held = AdjuvantRate.of(a.rate());
    return held.unit().equals(asked.unit()) && held.most() >= asked.most();
  }

  @Property
  void nothingThatAPartnerRefusesGoesIn(@ForAll("starter") List<Partner> partners) {
    Set<String> refused =
        partners.stream()
            .flatMap(p -> p.terms().tank().adjuvantRefused().find().stream())
            .flatMap(Set::stream)
            .map(AdjuvantKind::spelling)
            .collect(Collectors.toSet());

    assertThat(TankNeeds.of(partners).adjuvants())
        .extracting(Adjuvant::kind)
        .noneMatch(refused::contains);
  }
}
