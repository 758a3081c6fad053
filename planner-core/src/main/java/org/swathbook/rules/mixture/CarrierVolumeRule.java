package org.swathbook.rules.mixture;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Terms;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.program.Carrier;
import org.swathbook.rules.About;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.rules.Where;

/** Spray volume, and what carries it. */
public final class CarrierVolumeRule implements PassRule {
  /** What contact actives want where no label names a volume, gal/acre. */
  private static final double CONTACT_GALLONS = 15;

  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("carrier-volume"),
          Severity.BLOCK,
          "Is there enough spray volume for every partner?",
          "The spray volume is below the least or above the highest volume that a label states: a"
              + " block; below the volume that a label advises: a warning. Below 15"
              + " gal/acre with a contact active (sites 10, 14, 22) whose label states none: a warning."
              + " Liquid fertilizer over a crop that is up where a label refuses it: a block. Asks, at"
              + " the loading pad, for the volume and for what labels say and the catalog does not.",
          List.of("the labels' own least volumes", Say.COMMON_PRACTICE),
          "dicamba over soybean at 10 gal/acre, where 15 are the least; liquid fertilizer over corn of V4"
              + " with mesotrione, which refuses it",
          "glyphosate and 2,4-D choline at 15 gal/acre");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(PassFacts facts, Findings out) {
    OptionalDouble gallons = facts.pass().mix().gallonsPerAcre();
    if (gallons.isEmpty()) {
      if (facts.job().isPresent()) {
        out.ask(
            this,
            facts.about(),
            () -> new Lookup("spray volume in gal/acre", "the job: carrier volume"));
      }
    } else {
      for (ActiveUse a : facts.actives()) {
        volume(facts, a, gallons.getAsDouble(), out);
      }
    }
    if (facts.isInCrop()
        && facts
            .job()
            .filter(j -> j.carrier().liquid() == Carrier.Liquid.LIQUID_FERTILIZER)
            .isPresent()) {
      for (ActiveUse a : facts.actives()) {
        fertilizer(facts, a, out);
      }
    }
  }

  private void volume(PassFacts facts, ActiveUse a, double gallons, Findings out) {
    About about = facts.about().withIngredient(a.ingredient().id());
    Stated<Double> least = a.terms().carrierMinGalPerAcre();
    if (least.isUnknown() && facts.job().isPresent()) {
      out.ask(
          this,
          about,
          () ->
              new Lookup(
                  "least spray volume of " + a.ingredient().name(),
                  Where.ingredient(a.ingredient(), "carrier.min", "spray volume")));
    }
    Stated<Double> advised = a.terms().carrierAdvisedGalPerAcre();
    highest(facts, a, gallons, out);
    if (least.find().isPresent() && Quantity.exceeds(least.find().get(), gallons)) {
      double needed = least.find().get();
      out.block(
          this,
          about,
          () ->
              low(
                  facts,
                  "The label of "
                      + a.ingredient().name()
                      + " asks for at least "
                      + volume(needed)
                      + "; this pass sprays "
                      + volume(gallons)
                      + ".",
                  gallons,
                  needed,
                  Say.source(least)));
    } else if (advised.find().isPresent() && Quantity.exceeds(advised.find().get(), gallons)) {
      double needed = advised.find().get();
      out.warn(
          this,
          about,
          () ->
              low(
                  facts,
                  "The label of "
                      + a.ingredient().name()
                      + " advises at least "
                      + volume(needed)
                      + "; this pass sprays "
                      + volume(gallons)
                      + ".",
                  gallons,
                  needed,
                  Say.source(advised)));
    } else if (least.find().isEmpty()
        && advised.find().isEmpty()
        && isContact(a)
        && Quantity.exceeds(CONTACT_GALLONS, gallons)) {
      out.warn(
          this,
          about,
          () ->
              low(
                  facts,
                  Say.start(a.ingredient())
                      + " must cover leaves; "
                      + volume(gallons)
                      + " leaves gaps.",
                  gallons,
                  CONTACT_GALLONS,
                  Say.COMMON_PRACTICE));
    }
  }

  private void highest(PassFacts facts, ActiveUse a, double gallons, Findings out) {
    Stated<Double> most = a.terms().carrierMaxGalPerAcre();
    if (most.find().isPresent() && Quantity.exceeds(gallons, most.find().get())) {
      double allowed = most.find().get();
      out.block(
          this,
          facts.about().withIngredient(a.ingredient().id()),
          () ->
              Text.of(
                      "The label of "
                          + a.ingredient().name()
                          + " allows at most "
                          + volume(allowed)
                          + "; this pass sprays "
                          + volume(gallons)
                          + ".",
                      Say.source(most))
                  .compared(volume(gallons), "at most " + volume(allowed))
                  .cleared(remedy(facts, allowed)));
    }
  }

  private static Text low(
      PassFacts facts, String message, double gallons, double needed, String source) {
    return Text.of(message, source)
        .compared(volume(gallons), "at least " + volume(needed))
        .cleared(remedy(facts, needed));
  }

  /**
   * The lowest volume that meets every label of the tank, from one that answers the finding on; and
   * what a load of it covers.
   */
  private static String remedy(PassFacts facts, double answer) {
    double least = largest(facts, Terms::carrierMinGalPerAcre).orElse(0);
    double most =
        facts.actives().stream()
            .flatMap(a -> a.terms().carrierMaxGalPerAcre().find().stream())
            .mapToDouble(Double::doubleValue)
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    if (Quantity.exceeds(least, most)) {
      return "two passes: no volume is within all labels of this tank";
    }
    double advised = largest(facts, Terms::carrierAdvisedGalPerAcre).orElse(0);
    double spray = Math.min(most, Math.max(answer, Math.max(least, advised)));
    String load =
        facts
            .job()
            .filter(j -> j.tank().gallons().isPresent())
            .map(
                j ->
                    "; a load of "
                        + Numbers.decimals(j.tank().gallons().getAsDouble(), 1)
                        + " gal then covers "
                        + Numbers.decimals(j.tank().gallons().getAsDouble() / spray, 1)
                        + " acres")
            .orElse("");
    return "spray " + volume(spray) + load;
  }

  private static OptionalDouble largest(PassFacts facts, Function<Terms, Stated<Double>> volume) {
    return facts.actives().stream()
        .flatMap(a -> volume.apply(a.terms()).find().stream())
        .mapToDouble(Double::doubleValue)
        .max();
  }

  private static boolean isContact(ActiveUse a) {
    int site = a.ingredient().site().number();
    return a.ingredient().hasFoliarActivity() && (site == 10 || site == 14 || site == 22);
  }

  private void fertilizer(PassFacts facts, ActiveUse a, Findings out) {
    Stated<Boolean> refused = a.terms().fertilizerRefusedOverCrop();
    About about = facts.about().withIngredient(a.ingredient().id());
    if (refused.isUnknown()) {
      out.ask(
          this,
          about,
          () ->
              new Lookup(
                  "whether " + a.ingredient().name() + " may go over the crop in liquid fertilizer",
                  Where.ingredient(a.ingredient(), "carrier.fertilizer", "carrier")));
    } else if (refused.find().orElse(false)) {
      out.block(
          this,
          about,
          () ->
              Text.of(
                      "The label of "
                          + a.ingredient().name()
                          + " refuses liquid fertilizer as the carrier over a crop that is up.",
                      Say.source(refused))
                  .compared("liquid fertilizer", "water")
                  .cleared("water as the carrier"));
    }
  }

  private static String volume(double gallons) {
    return Numbers.decimals(gallons, 2) + " gal/acre";
  }
}
