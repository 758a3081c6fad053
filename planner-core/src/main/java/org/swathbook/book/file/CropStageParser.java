package org.swathbook.book.file;

import java.util.List;
import java.util.OptionalInt;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropStage;
import org.swathbook.source.TextParser;

/** A stage of a crop as the catalog names it, typed in any spelling of it. */
final class CropStageParser {
  private CropStageParser() {}

  static TextParser<String> of(Crop crop) {
    return text -> {
      List<String> known = crop.stages().stream().map(CropStage::name).toList();
      OptionalInt place = crop.findStage(text);
      if (place.isEmpty()) {
        throw Names.unknown(text, "stage of " + crop.id(), known);
      }
      return known.get(place.getAsInt());
    };
  }
}
