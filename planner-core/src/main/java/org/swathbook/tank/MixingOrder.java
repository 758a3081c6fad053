package org.swathbook.tank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
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
    poured.sort(
        Comparator.comparingInt((Poured p) -> PartOrder.place(p.part()))
            .thenComparing(Poured::name));
    LabelOrder labels = LabelOrder.of(poured);
    return new MixingOrder(
        sequence(labels.order(), liquid),
        disagreements(poured),
        labels.said(),
        labels.againstGuides(),
        labels.circles());
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

  private static List<String> disagreements(List<Poured> poured) {
    SortedSet<TankPart> parts = new TreeSet<>(Comparator.comparingInt(PartOrder::place));
    poured.forEach(p -> parts.add(p.part()));
    List<String> out = new ArrayList<>();
    for (TankPart first : parts) {
      for (TankPart later : parts) {
        if (PartOrder.place(first) < PartOrder.place(later)) {
          List<String> others =
              MixingGuide.ALL.stream()
                  .filter(g -> g.puts(later, first))
                  .map(MixingGuide::name)
                  .toList();
          if (!others.isEmpty()) {
            out.add(
                String.join(" and ", others)
                    + (others.size() == 1 ? " puts " : " put ")
                    + later.plural()
                    + " before "
                    + first.plural());
          }
        }
      }
    }
    return out;
  }
}
