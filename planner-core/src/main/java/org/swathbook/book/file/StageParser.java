package org.swathbook.book.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropStage;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Slug;
import org.swathbook.source.TextParser;

/**
 * A crop's stage in the journal: a stage of the crop as the catalog names it, or a position such as
 * {@code pre} or {@code stubble}. A crop without stages in the catalog takes any text.
 */
final class StageParser implements TextParser<String> {
  private final Optional<Crop> crop;

  StageParser(Catalog catalog, String crop) {
    this.crop = catalog.findCrop(crop);
  }

  @Override
  public String parse(String text) {
    if (crop.isEmpty() || crop.get().findStage(text).isPresent()) {
      return text;
    }
    List<String> known = new ArrayList<>();
    for (Position p : Position.values()) {
      if (p.spelling().equals(Slug.of(text))) {
        return text;
      }
      known.add(p.spelling());
    }
    crop.get().stages().stream().map(CropStage::name).forEach(known::add);
    throw Names.unknown(text, "stage of " + crop.get().id(), known);
  }
}
