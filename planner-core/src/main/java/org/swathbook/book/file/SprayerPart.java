package org.swathbook.book.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.catalog.DropletClass;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.TankTerms;
import org.swathbook.measure.Unit;
import org.swathbook.program.Carrier;
import org.swathbook.program.EarlierLoad;
import org.swathbook.program.SprayerSetup;
import org.swathbook.program.SprayerTank;
import org.swathbook.source.MapReader;
import org.swathbook.source.Node;
import org.swathbook.source.Problems;
import org.swathbook.source.ScalarNode;
import org.swathbook.source.Texts;

/** What is sprayed with, as a mix writes it: the carrier, the sprayer's setting and its tank. */
final class SprayerPart {
  private static final String EARLIER = "{held: [dicamba], cleaned: water-rinse}";

  private final Names names;
  private final Problems problems;

  SprayerPart(Names names, Problems problems) {
    this.names = names;
    this.problems = problems;
  }

  static Carrier carrier(MapReader map) {
    Carrier.Liquid liquid =
        map.find("liquid", Texts.oneOf(Carrier.Liquid.values(), Carrier.Liquid::spelling), "water")
            .orElse(Carrier.Liquid.WATER);
    Optional<MapReader> water = map.findMap("water", "water: {hardness: 320 ppm CaCO3, ph: 7.6}");
    map.done();
    if (water.isEmpty()) {
      return new Carrier(
          liquid, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }
    MapReader w = water.get();
    Carrier out =
        new Carrier(
            liquid,
            w.findNumber("hardness", MixCells::hardnessPpmCaCo3, "320 ppm CaCO3"),
            w.findNumber("ph", MixCells::ph, "7.6"),
            w.findNumber("iron", MixCells::ppm, "0.3 ppm"));
    w.done();
    return out;
  }

  static SprayerSetup setup(MapReader map) {
    SprayerSetup out =
        new SprayerSetup(
            map.find(
                "droplets",
                Texts.oneOf(DropletClass.values(), DropletClass::spelling),
                "very coarse"),
            map.findNumber("speed", Texts.in(Unit.MILE_PER_HOUR, "10 mph"), "10 mph"),
            map.findNumber("pressure", MixCells::psi, "40 psi"),
            map.find("nozzlesListed", Texts::yesNo, "yes"),
            map.find("incorporated", Texts::yesNo, "no"));
    map.done();
    return out;
  }

  SprayerTank tank(MapReader map) {
    SprayerTank out =
        new SprayerTank(
            map.findNumber("tank", Texts.in(Unit.GALLON, "1200 gal"), "1200 gal"),
            held(map, "lastLoad"),
            map.find(
                "cleaned",
                Texts.oneOf(TankTerms.Rinse.values(), TankTerms.Rinse::spelling),
                "triple-rinse"),
            earlier(map));
    map.done();
    return out;
  }

  /** {@code none}, one active or a list; products stand for their actives. */
  private Optional<List<IngredientId>> held(MapReader map, String key) {
    Optional<Node> node = map.find(key);
    if (node.isEmpty()) {
      return Optional.empty();
    }
    if (node.get() instanceof ScalarNode s && s.isWord("none")) {
      return Optional.of(List.of());
    }
    List<IngredientId> out = new ArrayList<>();
    for (Node item : MapReader.oneOrMore(node.get())) {
      MapReader.scalar(item, this::actives, "atrazine", problems).ifPresent(out::addAll);
    }
    return Optional.of(out);
  }

  /** {@code none}, or a list of loads, the latest first. */
  private Optional<List<EarlierLoad>> earlier(MapReader map) {
    Optional<Node> node = map.find("earlier");
    if (node.isEmpty()) {
      return Optional.empty();
    }
    if (node.get() instanceof ScalarNode s && s.isWord("none")) {
      return Optional.of(List.of());
    }
    List<EarlierLoad> out = new ArrayList<>();
    for (Node item : MapReader.oneOrMore(node.get())) {
      MapReader.of(item, EARLIER, problems).map(this::earlierLoad).ifPresent(out::add);
    }
    return Optional.of(out);
  }

  private EarlierLoad earlierLoad(MapReader map) {
    if (!map.has("held")) {
      problems.add(map.mark(), "what the load held is missing", "write as " + EARLIER);
    }
    EarlierLoad out =
        new EarlierLoad(
            held(map, "held").orElse(List.of()),
            map.find(
                "cleaned",
                Texts.oneOf(TankTerms.Rinse.values(), TankTerms.Rinse::spelling),
                "triple-rinse"));
    map.done();
    return out;
  }

  private List<IngredientId> actives(String text) {
    return names
        .catalog()
        .findProduct(text)
        .map(p -> p.contents().stream().map(c -> c.ingredient()).toList())
        .orElseGet(() -> List.of(names.ingredient(text).id()));
  }
}
