package org.swathbook.catalog.file;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Supplier;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.DayTerms;
import org.swathbook.catalog.DropletClass;
import org.swathbook.catalog.Foliar;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.Setbacks;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TankTerms;
import org.swathbook.catalog.Terms;
import org.swathbook.measure.Unit;

/** Random terms of an ingredient, and of uses over them. */
final class RandomTerms {
  private final Draw draw;
  private final List<CropId> crops;
  private final List<IngredientId> ingredients;

  RandomTerms(Draw draw, List<CropId> crops, List<IngredientId> ingredients) {
    this.draw = draw;
    this.crops = crops;
    this.ingredients = ingredients;
  }

  Terms ofIngredient() {
    return over(TermsReader.unknown(), 0.75);
  }

  /** A use says a few things of its own. */
  Terms over(Terms base) {
    return over(base, 0.15);
  }

  private Terms over(Terms base, double share) {
    Own own = new Own(base, share);
    return new Terms(
        own.of(Terms::foliar, this::foliar),
        own.of(Terms::carrierMinGalPerAcre, () -> draw.number(1, 40)),
        own.of(Terms::carrierAdvisedGalPerAcre, () -> draw.number(41, 50)),
        own.of(Terms::carrierMaxGalPerAcre, () -> draw.number(51, 90)),
        own.of(Terms::waterPh, this::ph),
        own.of(Terms::fertilizerRefusedOverCrop, () -> true),
        own.of(Terms::reentryHours, draw::hours),
        own.of(Terms::restrictedUse, () -> draw.chance(0.5)),
        own.of(Terms::training, () -> draw.pick("dicamba", "paraquat")),
        new TankTerms(
            own.of(t -> t.tank().adjuvantNeeded(), () -> draw.list(1, 3, this::need)),
            own.of(t -> t.tank().adjuvantRefused(), this::adjuvants),
            own.of(t -> t.tank().partners(), this::partners),
            own.of(t -> t.tank().droplets(), this::droplets),
            own.of(t -> t.tank().nozzlesListed(), () -> true),
            own.of(t -> t.tank().insecticides(), this::insecticides),
            own.of(t -> t.tank().jarTestRefused(), () -> true),
            own.of(t -> t.tank().cleanOut(), this::cleanOut)),
        new DayTerms(
            own.of(t -> t.day().windMph(), this::wind),
            own.of(t -> t.day().temperature(), this::temperature),
            own.of(t -> t.day().inversionRefused(), () -> true),
            own.of(t -> t.day().hours(), this::hours),
            own.of(t -> t.day().runoffRainHours(), draw::hours),
            own.of(t -> t.day().downwindBuffer(), this::buffer)),
        own.of(Terms::setbacks, this::setbacks));
  }

  /** What is said anew, and what stays as it was. */
  private final class Own {
    private final Terms base;
    private final double share;

    Own(Terms base, double share) {
      this.base = base;
      this.share = share;
    }

    <T> Stated<T> of(Function<Terms, Stated<T>> part, Supplier<T> value) {
      return draw.chance(share) ? draw.known(value) : part.apply(base);
    }
  }

  private Limit ph() {
    double least = draw.number(0, 7);
    return draw.pick(
        new Limit(OptionalDouble.of(least), false, OptionalDouble.of(least + 2), false),
        Limit.atLeast(least),
        Limit.below(least));
  }

  private Foliar foliar() {
    return new Foliar(draw.stated("rain-free time", draw::hours));
  }

  private TankTerms.AdjuvantNeed need() {
    if (draw.chance(0.5)) {
      Map<AdjuvantKind, String> rates = new LinkedHashMap<>();
      adjuvants().forEach(k -> rates.put(k, adjuvantRate()));
      return new TankTerms.AdjuvantNeed(rates.keySet(), rates, draw.chance(0.5));
    }
    return new TankTerms.AdjuvantNeed(
        adjuvants(), draw.maybe(this::adjuvantRate), draw.chance(0.5));
  }

  private String adjuvantRate() {
    return ExactText.number(draw.number(0, 20)) + draw.pick(" % v/v", " lb/100 gal");
  }

  private Set<AdjuvantKind> adjuvants() {
    return draw.some(Arrays.asList(AdjuvantKind.values()), 1);
  }

  private TankTerms.PartnerList partners() {
    return new TankTerms.PartnerList(draw.chance(0.5), draw.some(ingredients, 1));
  }

  private TankTerms.DropletRange droplets() {
    List<DropletClass> classes = Arrays.asList(DropletClass.values());
    DropletClass from = draw.pick(classes);
    return new TankTerms.DropletRange(
        from, draw.pick(classes.stream().filter(c -> c.compareTo(from) >= 0).toList()));
  }

  private TankTerms.InsecticideLimit insecticides() {
    List<String> classes = List.of("organophosphate", "carbamate", draw.text());
    return new TankTerms.InsecticideLimit(
        draw.some(classes, 0),
        draw.some(classes, 1),
        draw.chance(0.5) ? OptionalInt.of(draw.whole(0, 30)) : OptionalInt.empty());
  }

  private TankTerms.CleanOut cleanOut() {
    return new TankTerms.CleanOut(draw.pick(TankTerms.Rinse.values()), draw.some(crops, 0));
  }

  private Limit wind() {
    return draw.minMax(
        () -> draw.quantity(20, Unit.MILE_PER_HOUR, Unit.MILE_PER_HOUR, Unit.METRE_PER_SECOND));
  }

  private DayTerms.TemperatureLimit temperature() {
    return new DayTerms.TemperatureLimit(
        draw.minMax(
            () ->
                draw.chance(0.5)
                    ? Unit.FAHRENHEIT.toSi(draw.number(-20, 110))
                    : draw.number(-20, 40)),
        draw.chance(0.3));
  }

  private DayTerms.SprayHours hours() {
    return new DayTerms.SprayHours(draw.number(-3, 5), draw.number(-3, 5), draw.chance(0.3));
  }

  private DayTerms.Buffer buffer() {
    double feet = draw.feet();
    return new DayTerms.Buffer(
        feet, draw.chance(0.4) ? OptionalDouble.of(feet) : OptionalDouble.empty());
  }

  private Setbacks setbacks() {
    TreeMap<String, Double> feet = new TreeMap<>();
    draw.some(TermsReader.WATERS, 0).forEach(w -> feet.put(w, draw.feet()));
    return new Setbacks(feet);
  }
}
