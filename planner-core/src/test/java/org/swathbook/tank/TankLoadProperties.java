package org.swathbook.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.swathbook.catalog.Product;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
import org.swathbook.measure.Unit;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.testing.MixCase;

/** Laws of loads, whatever is in them: products of the starter catalog at rates of all sizes. */
class TankLoadProperties {
  private static final double RELATIVE = 1e-9;

  private record Job(Mix mix, double acres, double gallonsPerAcre, double tankGallons) {
    LoadSplit split() {
      return LoadSplit.of(acres, gallonsPerAcre, tankGallons);
    }

    List<TankLoad> loads() {
      return split().loads().stream().map(s -> TankLoad.of(mix, s, Map.of())).toList();
    }
  }

  private static Dose dose(Product p, double amount) {
    Rate unit = p.spoken();
    boolean volume = unit.isVolume();
    // At most half a gallon or five pounds an acre, so that four leave room in ten gallons.
    double per = new Quantity(amount, volume ? Unit.GALLON : Unit.POUND).in(unit.unit());
    return Doses.ofProduct(
        MixCase.CATALOG,
        p,
        new Rate(per * (volume ? 0.5 : 5), unit.unit(), unit.area(), unit.basis()));
  }

  @Provide
  Arbitrary<Job> jobs() {
    Arbitrary<Dose> dose =
        Combinators.combine(
                Arbitraries.of(MixCase.CATALOG.products()), Arbitraries.doubles().between(0.01, 1))
            .as(TankLoadProperties::dose);
    Arbitrary<List<Adjuvant>> adjuvants =
        Arbitraries.of(
                new Adjuvant("ammonium-sulfate", "8.5 lb/100 gal"),
                new Adjuvant("crop-oil", "1 % v/v"),
                new Adjuvant("crop-oil", "1 qt/acre"),
                new Adjuvant("nonionic-surfactant", "1 qt/100 gal"),
                new Adjuvant("drift-reducer", "as the label says"))
            .list()
            .uniqueElements()
            .ofMaxSize(3);
    return Combinators.combine(
            dose.list().ofMinSize(1).ofMaxSize(4),
            adjuvants,
            Arbitraries.doubles().between(0.5, 640),
            Arbitraries.doubles().between(10, 40),
            Arbitraries.doubles().between(60, 1600))
        .as(
            (d, a, acres, perAcre, tank) ->
                new Job(new Mix(d, a, OptionalDouble.of(perAcre)), acres, perAcre, tank));
  }

  @Property(tries = 200)
  void loadsAddUpToTheAcresAndNoneIsMoreThanTheTank(@ForAll("jobs") Job job) {
    List<LoadSize> loads = job.split().loads();

    assertThat(loads.stream().mapToDouble(LoadSize::acres).sum())
        .isCloseTo(job.acres(), within(RELATIVE * job.acres()));
    assertThat(loads)
        .allSatisfy(
            l -> {
              assertThat(l.gallons()).isLessThanOrEqualTo(job.tankGallons() * (1 + RELATIVE));
              assertThat(l.gallons())
                  .isCloseTo(l.acres() * job.gallonsPerAcre(), within(RELATIVE * l.gallons()));
            });
    // One load fewer would not hold it.
    assertThat((loads.size() - 1) * job.tankGallons())
        .isLessThan(job.acres() * job.gallonsPerAcre());
  }

  @Property(tries = 200)
  void productsOfAllLoadsAddUpToTheRateTimesTheAcres(@ForAll("jobs") Job job) {
    List<TankLoad> loads = job.loads();
    for (LoadedProduct first : loads.get(0).products()) {
      Product p = first.product();
      double poured =
          loads.stream()
              .flatMap(l -> l.products().stream())
              .filter(x -> x.product().equals(p))
              .mapToDouble(x -> x.amount().si())
              .sum();
      double wanted =
          job.mix().doses().stream()
              .filter(d -> d.product().equals(p))
              .mapToDouble(d -> d.rate().unit().toSi(d.rate().amount() * job.acres()))
              .sum();
      assertThat(poured).isCloseTo(wanted, within(RELATIVE * wanted));
    }
  }

  @Property(tries = 200)
  void carrierAndLiquidsFillTheLoad(@ForAll("jobs") Job job) {
    for (TankLoad l : job.loads()) {
      double liquids = 0;
      for (LoadedProduct p : l.products()) {
        if (p.amount().unit().dimension() == Dimension.VOLUME) {
          liquids += p.amount().in(Unit.GALLON);
        }
      }
      for (LoadedAdjuvant a : l.adjuvants()) {
        if (a.amount().isPresent() && a.amount().get().unit().dimension() == Dimension.VOLUME) {
          liquids += a.amount().get().in(Unit.GALLON);
        }
      }
      assertThat(l.carrierGallons()).isPositive();
      assertThat(l.carrierGallons() + liquids)
          .isCloseTo(l.size().gallons(), within(RELATIVE * l.size().gallons()));
    }
  }

  @Property(tries = 200)
  void moreAcresNeverTakeFewerLoads(
      @ForAll("jobs") Job job, @ForAll @DoubleRange(min = 0, max = 200) double more) {
    assertThat(
            LoadSplit.of(job.acres() + more, job.gallonsPerAcre(), job.tankGallons())
                .loads()
                .size())
        .isGreaterThanOrEqualTo(job.split().loads().size());
  }

  @Property(tries = 200)
  void nothingPouredIsAboveTheRate(@ForAll("jobs") Job job) {
    for (TankLoad l : job.loads()) {
      for (LoadedProduct p : l.products()) {
        assertThat(p.poured().rounded().in(p.amount().unit()))
            .isLessThanOrEqualTo(p.amount().value() * (1 + 1e-8));
      }
    }
  }
}
