package org.swathbook.escapes;

import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Site;

/**
 * What a second pass gave in trials on 30-cm waterhemp, 3, 7 or 11 days after the first had failed:
 * Haarmann et al. 2020. It stands beside the model's figure and does not change it.
 */
final class PublishedResprays {
  private PublishedResprays() {}

  static Optional<String> of(List<Site> failed, Ingredient again) {
    String name = again.capGroup();
    boolean glufosinate = again.site().number() == 10;
    if (failed.equals(List.of(Site.of(10))) && (glufosinate || name.equals("fomesafen"))) {
      return Optional.of("90 to 100 % of waterhemp after glufosinate (Haarmann et al. 2020)");
    }
    if (failed.equals(List.of(Site.of(14))) && (glufosinate || name.equals("2,4-D"))) {
      return Optional.of("87 to 99 % of waterhemp after fomesafen (Haarmann et al. 2020)");
    }
    return Optional.empty();
  }
}
