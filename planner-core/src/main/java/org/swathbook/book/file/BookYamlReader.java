package org.swathbook.book.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.swathbook.book.CropEconomics;
import org.swathbook.catalog.CropId;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Money;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapReader;
import org.swathbook.source.Node;
import org.swathbook.source.Problems;
import org.swathbook.source.ScalarNode;
import org.swathbook.source.Texts;

/** Reads {@code book.yaml}. What needs the catalog is read in a second step. */
final class BookYamlReader {
  static final String FORMAT = "swathbook.book/1";

  private BookYamlReader() {}

  static BookYaml read(MapNode root, Problems problems) {
    MapReader book = new MapReader(root, problems);
    book.require("format", Texts.oneOf(List.of(FORMAT)), FORMAT, FORMAT);
    String name = book.require("name", Texts::text, "Our growers, season 2027", "");
    Optional<Integer> season = book.require("season", Parsers.whole(1950, 2200), "2027");
    String units = book.find("units", Texts.oneOf(List.of("us", "metric")), "us").orElse("us");
    Optional<MapReader> catalog =
        book.findMap("catalog", "catalog: {starter: yes, folder: catalog}");
    boolean starter = catalog.flatMap(c -> c.find("starter", Texts::yesNo, "yes")).orElse(true);
    String folder =
        catalog.flatMap(c -> c.find("folder", BookYamlReader::folder, "catalog")).orElse("catalog");
    catalog.ifPresent(MapReader::done);
    Optional<MapNode> crops =
        map(book, "crops", "corn: {price: 4.35 $/bu, yieldGoal: 205 bu/acre}");
    Money passCost = book.require("passCost", Parsers::dollarsPerAcre, "9.00 $/acre", Money.ZERO);
    Money respray =
        book.find("resprayExtra", Parsers::dollarsPerAcre, "2.50 $/acre").orElse(Money.ZERO);
    Optional<MapNode> house = map(book, "houseRules", "seasonControl: 95 %");
    book.done();
    return new BookYaml(
        true,
        name,
        season,
        units.equals("metric"),
        starter,
        folder,
        crops,
        passCost,
        respray,
        house);
  }

  /** Prices and yields of the crops in the order of the file; empty when they have a problem. */
  static Optional<Map<CropId, CropEconomics>> crops(BookYaml yaml, Names names, Problems problems) {
    int before = problems.count();
    Map<CropId, CropEconomics> out = new LinkedHashMap<>();
    for (MapNode.Entry e : yaml.crops().map(MapNode::entries).orElse(List.of())) {
      Optional<CropId> crop =
          MapReader.scalar(
              new ScalarNode(e.keyMark(), e.key(), false),
              t -> names.crop(t).id(),
              "corn",
              problems);
      Optional<MapReader> map =
          MapReader.of(e.value(), "{price: 4.35 $/bu, yieldGoal: 205 bu/acre}", problems);
      if (map.isEmpty()) {
        continue;
      }
      double price = map.get().require("price", Parsers::dollarsPerBushel, "4.35 $/bu", 0.0);
      double yieldGoal =
          map.get().require("yieldGoal", Parsers::bushelsPerAcre, "205 bu/acre", 1.0);
      map.get().done();
      if (crop.isPresent()
          && out.putIfAbsent(crop.get(), new CropEconomics(price, yieldGoal)) != null) {
        problems.add(
            e.keyMark(), "the crop " + crop.get() + " stands here again", "keep one of the two");
      }
    }
    return problems.count() > before || !yaml.isReadable() ? Optional.empty() : Optional.of(out);
  }

  private static Optional<MapNode> map(MapReader in, String key, String example) {
    Optional<Node> node = in.find(key);
    if (node.isPresent() && node.get() instanceof ScalarNode s && s.isEmpty()) {
      return Optional.empty();
    }
    return node.flatMap(n -> MapReader.of(n, key + ": {" + example + "}", in.problems()))
        .map(MapReader::node);
  }

  /** A folder inside the book. */
  private static String folder(String text) {
    String t = text.strip();
    if (!BookPaths.isPlainName(t)) {
      throw new MeasureException(
          "'" + text + "' is no folder of the book; write the name of a folder, as catalog");
    }
    return t;
  }
}
