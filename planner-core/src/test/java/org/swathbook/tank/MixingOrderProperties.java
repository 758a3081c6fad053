package org.swathbook.tank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.Product;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Carrier;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.testing.MixCase;

class MixingOrderProperties {

  private static Dose dose(Product p) {
    return Doses.ofProduct(MixCase.CATALOG, p, p.spoken());
  }

  private static MixingOrder order(Mix mix) {
    return MixingOrder.of(mix, Carrier.Liquid.WATER);
  }

  @Provide
  Arbitrary<Mix> mixes() {
    Arbitrary<List<Product>> products =
        Arbitraries.of(MixCase.CATALOG.products()).list().uniqueElements().ofMaxSize(7);
    Arbitrary<List<AdjuvantKind>> adjuvants =
        Arbitraries.of(AdjuvantKind.class).list().uniqueElements().ofMaxSize(4);
    return Combinators.combine(products, adjuvants)
        .as(
            (p, a) ->
                new Mix(
                    p.stream().map(MixingOrderProperties::dose).toList(),
                    a.stream().map(k -> new Adjuvant(k.spelling(), "1 % v/v")).toList(),
                    OptionalDouble.empty()));
  }

  @Property(tries = 200)
  void itIsTheSameHoweverTheMixIsWritten(@ForAll("mixes") Mix mix) {
    List<Dose> doses = new ArrayList<>(mix.doses());
    List<Adjuvant> adjuvants = new ArrayList<>(mix.adjuvants());
    java.util.Collections.reverse(doses);
    java.util.Collections.rotate(doses, 1);
    java.util.Collections.reverse(adjuvants);

    assertThat(order(new Mix(doses, adjuvants, mix.gallonsPerAcre()))).isEqualTo(order(mix));
  }

  @Property(tries = 200)
  void everythingGoesInOnceBetweenTheFirstAndTheLastOfTheWater(@ForAll("mixes") Mix mix) {
    List<String> steps = order(mix).steps();

    assertThat(steps)
        .startsWith("half the water, agitator running")
        .endsWith("top up with water")
        .doesNotHaveDuplicates()
        .containsAll(
            Stream.concat(
                    mix.doses().stream().map(d -> d.product().name()),
                    mix.adjuvants().stream().map(Adjuvant::kind))
                .toList());
  }

  @Property(tries = 200)
  void oneMoreProductNeverChangesTheOrderOfTheOthers(@ForAll("mixes") Mix mix) {
    if (mix.doses().size() > 1) {
      Mix fewer =
          new Mix(
              mix.doses().subList(1, mix.doses().size()), mix.adjuvants(), mix.gallonsPerAcre());
      List<String> left = new ArrayList<>(order(mix).steps());
      left.retainAll(order(fewer).steps());
      List<String> before = new ArrayList<>(order(fewer).steps());
      before.retainAll(left);

      assertThat(left).isEqualTo(before);
    }
  }
}
