package org.swathbook.catalog.file;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.SoilCondition;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.measure.MeasureException;
import org.swathbook.source.MapReader;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/** Reads the soil conditions of a row: texture, organic matter, pH, erodible, residue. */
final class SoilConditions {
  private static final TextParser<Double> PERCENT = text -> Texts.share(text) * 100;

  /** A pH by itself. */
  static final TextParser<Double> PH =
      text -> {
        double ph = Texts.number(text);
        if (ph < 0 || ph > 14) {
          throw new MeasureException("'" + text + "' is no pH; write 0 to 14");
        }
        return ph;
      };

  private SoilConditions() {}

  static SoilCondition read(MapReader row) {
    Set<SoilTexture> textures = new LinkedHashSet<>();
    for (List<SoilTexture> some : row.findAll("texture", SoilConditions::textures, "medium")) {
      textures.addAll(some);
    }
    return new SoilCondition(
        textures,
        limit(row, "organicMatter", PERCENT, "< 2 %"),
        limit(row, "soilPh", PH, "< 7.5"),
        row.find("erodible", Texts::yesNo, "yes"),
        limit(row, "residue", PERCENT, "< 30 %"));
  }

  private static Optional<Limit> limit(
      MapReader row, String key, TextParser<Double> end, String example) {
    return row.find(key).flatMap(n -> Limits.read(n, end, example, row.problems()));
  }

  private static List<SoilTexture> textures(String text) {
    for (SoilTexture.Group group : SoilTexture.Group.values()) {
      if (group.name().toLowerCase(Locale.ROOT).equals(text.strip())) {
        return Arrays.stream(SoilTexture.values()).filter(t -> t.group() == group).toList();
      }
    }
    return SoilTexture.find(text)
        .map(List::of)
        .orElseThrow(
            () ->
                new MeasureException(
                    "'"
                        + text
                        + "' is no soil texture; write coarse, medium or fine, or a class as"
                        + " 'silt loam'"));
  }
}
