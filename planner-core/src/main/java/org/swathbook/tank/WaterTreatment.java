package org.swathbook.tank;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.Unit;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Carrier;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;

/** What the water of a tank needs so that its salts do not tie up weak acids. */
public sealed interface WaterTreatment {

  /** Liquid fertilizer carries the mix. */
  record NoWater() implements WaterTreatment {}

  /** Nothing in the tank that salts tie up. */
  record NoWeakAcid() implements WaterTreatment {}

  /**
   * Nobody tested the water.
   *
   * @param acids names of the actives that hard water ties up
   */
  record Untested(List<String> acids, AmmoniumSulfateFacts facts) implements WaterTreatment {
    public Untested {
      acids = List.copyOf(acids);
    }
  }

  /**
   * Tested water.
   *
   * @param hard more than {@link HardWater#MOST_HARDNESS_PPM} as CaCO3 or {@link
   *     HardWater#MOST_IRON_PPM} of iron
   * @param lbPer100Gal ammonium sulfate that ties up its salts
   * @param ironTested whether iron is among them
   */
  record Tested(
      List<String> acids,
      double hardnessPpmCaCo3,
      boolean hard,
      double lbPer100Gal,
      boolean ironTested,
      AmmoniumSulfateFacts facts)
      implements WaterTreatment {
    public Tested {
      acids = List.copyOf(acids);
    }

    /** The larger of what the water takes, where it is hard, and what labels ask for. */
    public double askedLbPer100Gal() {
      return Math.max(hard ? lbPer100Gal : 0, facts.askedByLabels().orElse(0));
    }
  }

  /**
   * Ammonium sulfate in this tank, lb in 100 gal.
   *
   * @param held what the mix has of it, 0 without; empty when it is written as a liquid or in words
   * @param askedByLabels most that a partner's label asks for by weight; empty when none does
   * @param refusedBy names of the partners that refuse it
   * @param conditioner whether a conditioner without ammonium is in the tank, which does the same
   *     at the rate of its own label
   */
  record AmmoniumSulfateFacts(
      OptionalDouble held,
      OptionalDouble askedByLabels,
      List<String> refusedBy,
      boolean conditioner) {
    public AmmoniumSulfateFacts {
      refusedBy = List.copyOf(refusedBy);
    }
  }

  static WaterTreatment of(
      Mix mix, double gallonsPerAcre, Carrier carrier, List<Partner> partners) {
    if (carrier.liquid() != Carrier.Liquid.WATER) {
      return new NoWater();
    }
    List<String> acids = acids(mix);
    if (acids.isEmpty()) {
      return new NoWeakAcid();
    }
    // What goes into 100 gal.
    LoadSize hundred = new LoadSize(100, 100 / gallonsPerAcre);
    AmmoniumSulfateFacts facts =
        new AmmoniumSulfateFacts(
            held(mix, hundred),
            asked(partners, hundred),
            refusing(partners),
            holds(mix, AdjuvantKind.WATER_CONDITIONER));
    if (carrier.hardnessPpmCaCo3().isEmpty()) {
      return new Untested(acids, facts);
    }
    double hardness = carrier.hardnessPpmCaCo3().getAsDouble();
    double iron = carrier.ironPpm().orElse(0);
    boolean hard = HardWater.isHard(carrier) || HardWater.hasMuchIron(carrier);
    return new Tested(
        acids,
        hardness,
        hard,
        AmmoniumSulfate.lbPer100Gal(hardness, iron),
        carrier.ironPpm().isPresent(),
        facts);
  }

  private static List<String> acids(Mix mix) {
    TreeSet<String> out = new TreeSet<>();
    for (Dose d : mix.doses()) {
      d.actives().stream()
          .map(a -> a.ingredient())
          .filter(i -> HardWater.tiesUp(i, d.product().formulation()))
          .forEach(i -> out.add(i.name()));
    }
    return List.copyOf(out);
  }

  private static boolean holds(Mix mix, AdjuvantKind kind) {
    return mix.adjuvants().stream()
        .anyMatch(a -> AdjuvantKind.find(a.kind()).equals(Optional.of(kind)));
  }

  private static OptionalDouble held(Mix mix, LoadSize hundred) {
    List<Adjuvant> sulfate =
        mix.adjuvants().stream()
            .filter(
                a -> AdjuvantKind.find(a.kind()).equals(Optional.of(AdjuvantKind.AMMONIUM_SULFATE)))
            .toList();
    double most = 0;
    for (Adjuvant a : sulfate) {
      OptionalDouble lb = pounds(a.rate(), hundred);
      if (lb.isEmpty()) {
        return OptionalDouble.empty();
      }
      most = Math.max(most, lb.getAsDouble());
    }
    return OptionalDouble.of(most);
  }

  private static OptionalDouble asked(List<Partner> partners, LoadSize hundred) {
    return TankNeeds.of(partners).adjuvants().stream()
        .filter(a -> a.kind().equals(AdjuvantKind.AMMONIUM_SULFATE.spelling()))
        .flatMapToDouble(a -> pounds(a.rate(), hundred).stream())
        .max();
  }

  private static OptionalDouble pounds(String rate, LoadSize hundred) {
    return LoadAmounts.ofAdjuvant(rate, hundred)
        .filter(q -> q.unit().dimension() == Dimension.MASS)
        .map(q -> OptionalDouble.of(q.in(Unit.POUND)))
        .orElse(OptionalDouble.empty());
  }

  private static List<String> refusing(List<Partner> partners) {
    TreeSet<String> out = new TreeSet<>();
    for (Partner p : partners) {
      if (p.terms()
          .tank()
          .adjuvantRefused()
          .find()
          .filter(r -> r.contains(AdjuvantKind.AMMONIUM_SULFATE))
          .isPresent()) {
        out.add(p.ingredient().name());
      }
    }
    return List.copyOf(out);
  }
}
