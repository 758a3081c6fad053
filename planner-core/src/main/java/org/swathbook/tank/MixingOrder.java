package org.swathbook.tank;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.catalog.Product;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Carrier;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;

/**
 * The order in which a tank is filled, by formulation: what has to dissolve or disperse first, what
 * makes an emulsion late, what wets last; out of five published guides, see {@link PartOrder}. What
 * the labels in the tank say of their own place goes before the guides.
 *
 * @param sequence from the first of the carrier to topping up
 * @param disagreements guides that have two things of this tank the other way round, as sentences
 *     without an end; empty where none of them does
 * @param byLabel what the labels of this tank say of their place, as sentences without an end
 * @param againstGuides those of them that most guides have the other way round
 * @param circles what a label says and other labels of the tank leave no room for
 */
public record MixingOrder(
    List<MixingStep> sequence,
    List<String> disagreements,
    List<String> byLabel,
    List<String> againstGuides,
    List<String> circles) {

  /** One thing that is poured. */
  record Poured(
      TankPart part,
      MixingStep.Kind kind,
      String name,
      String formulation,
      Optional<Product> product) {

    MixingStep step() {
      return new MixingStep(
          kind,
          name,
          formulation.isEmpty() ? Optional.empty() : Optional.of(formulation),
          Optional.of(part.plural()),
          MixingGuide.ALL.stream().filter(g -> g.names(part)).map(MixingGuide::name).toList());
    }
  }

  public MixingOrder {
    sequence = List.copyOf(sequence);
    disagreements = List.copyOf(disagreements);
    byLabel = List.copyOf(byLabel);
    againstGuides = List.copyOf(againstGuides);
    circles = List.copyOf(circles);
  }

  /** The same however the mix is written. */
  public static MixingOrder of(Mix mix, Carrier.Liquid liquid) {
    List<Poured> poured = new ArrayList<>();
    for (Dose d : mix.doses()) {
      String code = d.product().formulation();
      poured.add(
          new Poured(
              TankPart.ofFormulation(code),
              MixingStep.Kind.PRODUCT,
              d.product().name(),
              code,
              Optional.of(d.product())));
    }
    for (Adjuvant a : mix.adjuvants()) {
      poured.add(
          new Poured(
              TankPart.ofAdjuvant(a.kind()),
              MixingStep.Kind.ADJUVANT,
              a.kind(),
              "",
              Optional.empty()));
    }
    poured.sort(MixingOrder::byGuides);
    LabelOrder labels = LabelOrder.of(poured);
    return new MixingOrder(
        sequence(labels.order(), liquid),
        disagreements(poured),
        labels.said(),
        labels.againstGuides(),
        labels.circles());
  }

  private static int byGuides(Poured one, Poured other) {
    int c = Integer.compare(PartOrder.place(one.part()), PartOrder.place(other.part()));
    return c != 0 ? c : one.name().compareTo(other.name());
  }

  /** The same in words. */
  public List<String> steps() {
    return sequence.stream().map(MixingStep::what).toList();
  }

  /** Whether it is poured dry. */
  public static boolean isDry(String formulation) {
    return TankPart.ofFormulation(formulation).isDry();
  }

  /** Whether a guide gives such a thing a place. */
  public static boolean isNamedByGuides(String formulation) {
    TankPart part = TankPart.ofFormulation(formulation);
    return MixingGuide.ALL.stream().anyMatch(g -> g.names(part));
  }

  /** Whether it makes an emulsion. */
  public static boolean isEmulsion(String formulation) {
    TankPart part = TankPart.ofFormulation(formulation);
    return part == TankPart.EMULSION || part == TankPart.SUSPENDED_EMULSION;
  }

  private static List<MixingStep> sequence(List<Poured> poured, Carrier.Liquid liquid) {
    String carrier = liquid == Carrier.Liquid.WATER ? "water" : "liquid fertilizer";
    int lastDry = -1;
    for (int i = 0; i < poured.size(); i++) {
      lastDry = poured.get(i).part().isDry() ? i : lastDry;
    }
    List<MixingStep> out = new ArrayList<>();
    out.add(
        MixingStep.of(MixingStep.Kind.CARRIER_FIRST, "half the " + carrier + ", agitator running"));
    for (int i = 0; i < poured.size(); i++) {
      out.add(poured.get(i).step());
      if (i == lastDry) {
        out.add(
            MixingStep.of(
                MixingStep.Kind.WAIT, "wait until all that is dry is uniform, some minutes"));
      }
    }
    out.add(MixingStep.of(MixingStep.Kind.TOP_UP, "top up with " + carrier));
    // A premix is poured once, whichever of its actives it was met by.
    Set<String> said = new HashSet<>();
    return out.stream().filter(s -> said.add(s.kind() + " " + s.what())).toList();
  }

  /**
   * @param poured in the order of the guides
   */
  private static List<String> disagreements(List<Poured> poured) {
    List<TankPart> parts = poured.stream().map(Poured::part).distinct().toList();
    List<String> out = new ArrayList<>();
    for (int first = 0; first < parts.size(); first++) {
      for (int later = first + 1; later < parts.size(); later++) {
        List<String> others = puttingFirst(parts.get(later), parts.get(first));
        if (!others.isEmpty()) {
          out.add(
              String.join(" and ", others)
                  + (others.size() == 1 ? " puts " : " put ")
                  + parts.get(later).plural()
                  + " before "
                  + parts.get(first).plural());
        }
      }
    }
    return out;
  }

  /** Guides that put a kind before another, by their names. */
  private static List<String> puttingFirst(TankPart one, TankPart other) {
    List<String> out = new ArrayList<>();
    for (MixingGuide g : MixingGuide.ALL) {
      if (g.puts(one, other)) {
        out.add(g.name());
      }
    }
    return out;
  }
}
