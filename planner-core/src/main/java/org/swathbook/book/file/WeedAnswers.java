package org.swathbook.book.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.MeasureException;
import org.swathbook.program.SurvivorPattern;
import org.swathbook.source.MapWriter;
import org.swathbook.source.Texts;

/**
 * What was counted of one weed, answer by answer, as an observation's file writes it. What such a
 * file's reader would not take throws {@link MeasureException} and changes nothing.
 */
public final class WeedAnswers {

  /** What stands under a weed and is a length. */
  public enum Length {
    SPRAYED_AT("sprayedAt", "3 in"),
    NEW_GROWTH("newGrowth", "1 in");

    private final String key;
    private final String example;

    Length(String key, String example) {
      this.key = key;
      this.example = example;
    }
  }

  /** What a plant looks like. */
  public enum Look {
    DEAD("dead"),
    COLLAPSED("collapsed"),
    STALLED("stalled"),
    REGROWING("regrowing"),
    UNTOUCHED("untouched");

    private final String key;

    Look(String key) {
      this.key = key;
    }
  }

  /** What can be told with yes or no. */
  public enum Sign {
    SAME_SPECIES_DEAD_BESIDE("sameSpeciesDeadBeside"),
    OTHER_SPECIES_CONTROLLED("otherSpeciesControlled");

    private final String key;

    Sign(String key) {
      this.key = key;
    }
  }

  private final WeedId weed;
  private final Map<String, String> texts = new LinkedHashMap<>();
  private final Map<Look, Integer> counts = new LinkedHashMap<>();

  WeedAnswers(WeedId weed) {
    this.weed = weed;
  }

  public WeedId weed() {
    return weed;
  }

  public void length(Length which, String text) {
    ObservationReader.lengthCm(which.example).parse(text);
    texts.put(which.key, text.strip());
  }

  public void area(String text) {
    ScoutingCells.areaM2(text);
    texts.put("area", text.strip());
  }

  public void count(Look look, String text) {
    counts.put(look, Parsers.whole(0, ObservationReader.MOST_PLANTS).parse(text));
  }

  /** How many were counted of a look; 0 when nothing was said. */
  public int count(Look look) {
    return counts.getOrDefault(look, 0);
  }

  public static List<String> patterns() {
    return List.of(SurvivorPattern.values()).stream().map(SurvivorPattern::spelling).toList();
  }

  public void pattern(String text) {
    SurvivorPattern p =
        Texts.oneOf(SurvivorPattern.values(), SurvivorPattern::spelling).parse(text);
    texts.put("pattern", p.spelling());
  }

  public void sign(Sign sign, String text) {
    texts.put(sign.key, Texts.yesNo(text) ? "yes" : "no");
  }

  /** What stands behind the weed's code in the file. */
  MapWriter written() {
    MapWriter counted = new MapWriter();
    counted.put("area", String.valueOf(texts.get("area")));
    counts.forEach((look, n) -> counted.put(look.key, Integer.toString(n)));
    MapWriter out = new MapWriter();
    List<String> keys = new ArrayList<>(texts.keySet());
    keys.remove("area");
    out.put("plants", counted.node());
    keys.forEach(k -> out.put(k, String.valueOf(texts.get(k))));
    return out;
  }
}
