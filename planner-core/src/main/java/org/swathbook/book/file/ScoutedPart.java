package org.swathbook.book.file;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.Weed;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Unit;
import org.swathbook.program.Scouted;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapReader;
import org.swathbook.source.Node;
import org.swathbook.source.Problems;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/** What was seen in the field, as a mix writes it: the crop's stage and height, and weeds. */
final class ScoutedPart {
  private final Names names;
  private final Problems problems;

  ScoutedPart(Names names, Problems problems) {
    this.names = names;
    this.problems = problems;
  }

  /**
   * @param crop of the field; empty where the field cannot be told, and then any stage is taken
   */
  Scouted read(MapReader top, Optional<Crop> crop) {
    Optional<String> stage =
        top.find("cropStage", crop.map(CropStageParser::of).orElse(t -> t), "V3");
    OptionalDouble height = top.findNumber("cropHeight", heightCm("9 in"), "9 in");
    SortedMap<WeedId, Double> weeds = new TreeMap<>();
    Optional<Node> node = top.find("weeds");
    if (node.isPresent() && !(node.get() instanceof MapNode)) {
      problems.add(
          node.get().mark(), "here stands " + node.get().kind(), "write as 'weeds: {AMAPA: 3 in}'");
    } else if (node.isPresent()) {
      for (MapNode.Entry e : ((MapNode) node.get()).entries()) {
        weed(e, weeds);
      }
    }
    return new Scouted(stage, height, weeds);
  }

  private void weed(MapNode.Entry entry, SortedMap<WeedId, Double> out) {
    Optional<Weed> weed = names.weedOfKey(entry, problems);
    Optional<Double> cm = MapReader.scalar(entry.value(), heightCm("3 in"), "3 in", problems);
    if (weed.isPresent() && cm.isPresent() && out.put(weed.get().id(), cm.get()) != null) {
      problems.add(
          entry.keyMark(),
          "'" + entry.key() + "' is " + weed.get().name() + ", which stands here already",
          "write each weed once, with its tallest");
    }
  }

  private static TextParser<Double> heightCm(String example) {
    return text -> {
      double cm = Texts.in(Unit.CENTIMETRE, example).parse(text);
      if (!(cm > 0)) {
        throw new MeasureException(
            "'" + text + "' is not above zero; leave out what does not stand");
      }
      return cm;
    };
  }
}
