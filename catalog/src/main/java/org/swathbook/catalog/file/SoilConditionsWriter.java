package org.swathbook.catalog.file;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.swathbook.catalog.SoilCondition;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.source.MapWriter;

/** Writes the soil conditions of a row; whole groups of textures go by the name of the group. */
final class SoilConditionsWriter {
  private SoilConditionsWriter() {}

  static void write(MapWriter row, SoilCondition when) {
    if (!when.textures().isEmpty()) {
      row.put("texture", MapWriter.oneOrMore(names(when.textures())));
    }
    when.organicMatterPct()
        .ifPresent(l -> row.put("organicMatter", LimitsWriter.compared(l, ExactText::percentage)));
    when.soilPh().ifPresent(l -> row.put("soilPh", LimitsWriter.compared(l, ExactText::number)));
    when.erodible().ifPresent(e -> row.put("erodible", e ? "yes" : "no"));
    when.residuePct()
        .ifPresent(l -> row.put("residue", LimitsWriter.compared(l, ExactText::percentage)));
  }

  private static List<String> names(Set<SoilTexture> textures) {
    Set<SoilTexture> left = new LinkedHashSet<>(textures);
    List<String> names = new ArrayList<>();
    for (SoilTexture.Group group : SoilTexture.Group.values()) {
      List<SoilTexture> whole =
          Arrays.stream(SoilTexture.values()).filter(t -> t.group() == group).toList();
      if (left.containsAll(whole)) {
        whole.forEach(left::remove);
        names.add(group.name().toLowerCase(Locale.ROOT));
      }
    }
    left.forEach(t -> names.add(t.spelling()));
    return names;
  }
}
