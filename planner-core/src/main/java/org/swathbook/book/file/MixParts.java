package org.swathbook.book.file;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Product;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
import org.swathbook.measure.Unit;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Dose;
import org.swathbook.source.MapReader;
import org.swathbook.source.Mark;
import org.swathbook.source.Node;
import org.swathbook.source.Problems;
import org.swathbook.source.Texts;

/** The parts of a mix as programs and mixes write them: doses, adjuvants, spray volume. */
final class MixParts {
  private static final Pattern PER_HUNDRED =
      Pattern.compile("(.+?)\\s*/\\s*100\\s*(gal|gallons)", Pattern.CASE_INSENSITIVE);
  private static final Pattern BY_VOLUME =
      Pattern.compile("(.+%)\\s*v/v", Pattern.CASE_INSENSITIVE);
  private static final String DOSE = "{product: glyphosate-4.5sl, rate: 32 fl oz/acre}";
  private static final String ADJUVANT = "{kind: ammonium-sulfate, rate: 8.5 lb/100 gal}";

  private final DoseParser parser;
  private final Problems problems;

  MixParts(DoseParser parser, Problems problems) {
    this.parser = parser;
    this.problems = problems;
  }

  /** The items of a list of doses; problems stand for those that cannot be read. */
  List<Dose> doses(List<Node> items) {
    List<Dose> out = new ArrayList<>();
    items.forEach(n -> MapReader.of(n, DOSE, problems).flatMap(this::dose).ifPresent(out::add));
    return out;
  }

  private Optional<Dose> dose(MapReader map) {
    Optional<Product> product = map.find("product", parser::product, "glyphosate-4.5sl");
    Optional<Ingredient> ingredient = map.find("ingredient", parser::ingredient, "glyphosate");
    Optional<Rate> rate = map.require("rate", Rate::parse, "32 fl oz/acre");
    boolean none = !map.has("product") && !map.has("ingredient");
    map.done();
    if (none) {
      problems.add(map.mark(), "neither product nor ingredient is named", "write as " + DOSE);
    }
    boolean misread =
        map.has("product") && product.isEmpty() || map.has("ingredient") && ingredient.isEmpty();
    if (none || misread || rate.isEmpty()) {
      return Optional.empty();
    }
    Rate r = rate.get();
    if (ingredient.isEmpty()) {
      return tried(map.mark("rate"), () -> parser.ofProduct(product.orElseThrow(), r));
    }
    return product.isEmpty()
        ? tried(map.mark("rate"), () -> parser.ofIngredient(ingredient.get(), r))
        : tried(map.mark("product"), () -> parser.ofIngredient(ingredient.get(), product.get(), r));
  }

  private Optional<Dose> tried(Mark mark, Supplier<Dose> making) {
    try {
      return Optional.of(making.get());
    } catch (MeasureException e) {
      problems.add(mark, e, "32 fl oz/acre");
      return Optional.empty();
    }
  }

  List<Adjuvant> adjuvants(List<Node> items) {
    List<Adjuvant> out = new ArrayList<>();
    for (Node n : items) {
      Optional<MapReader> map = MapReader.of(n, ADJUVANT, problems);
      if (map.isEmpty()) {
        continue;
      }
      Optional<AdjuvantKind> kind = map.get().require("kind", MixParts::kind, "ammonium-sulfate");
      Optional<String> rate =
          map.get()
              .require("rate", "8.5 lb/100 gal")
              .flatMap(r -> MapReader.scalar(r, MixParts::adjuvantRate, "1 % v/v", problems));
      map.get().done();
      if (kind.isPresent() && rate.isPresent()) {
        out.add(new Adjuvant(kind.get().spelling(), rate.get()));
      }
    }
    return out;
  }

  private static AdjuvantKind kind(String text) {
    return AdjuvantKind.find(text)
        .orElseThrow(
            () ->
                Names.unknown(
                    text,
                    "kind of adjuvant",
                    Arrays.stream(AdjuvantKind.values()).map(AdjuvantKind::spelling).toList()));
  }

  /** {@code 8.5 lb/100 gal}, {@code 1 % v/v} or {@code 1 qt/acre}, kept as written. */
  static String adjuvantRate(String text) {
    if (text.equals(Adjuvant.RATE_OF_THE_LABEL)) {
      return text;
    }
    Matcher hundred = PER_HUNDRED.matcher(text);
    Matcher volume = BY_VOLUME.matcher(text);
    if (volume.matches()) {
      Texts.share(volume.group(1));
    } else if (hundred.matches()) {
      Quantity q = Quantity.parse(hundred.group(1));
      Dimension d = q.unit().dimension();
      if (q.value() < 0 || d != Dimension.MASS && d != Dimension.VOLUME) {
        throw new MeasureException(
            "'" + text + "' is no amount in 100 gallons; write for example '8.5 lb/100 gal'");
      }
    } else {
      Rate.parse(text);
    }
    return text;
  }

  /** Spray volume in gallons per acre. */
  static OptionalDouble gallonsPerAcre(MapReader carrier) {
    return carrier.findNumber("volume", MixParts::gallons, "15 gal/acre");
  }

  private static double gallons(String text) {
    Rate rate = Rate.parse(text);
    if (!rate.isVolume() || !(rate.amount() > 0)) {
      throw new MeasureException("'" + text + "' is no spray volume; write as '15 gal/acre'");
    }
    if (rate.unit() == Unit.GALLON && rate.area() == Unit.ACRE) {
      return rate.amount();
    }
    return Unit.GALLON.fromSi(rate.litresPerHa()) / 10000 * Unit.ACRE.toSi(1);
  }
}
