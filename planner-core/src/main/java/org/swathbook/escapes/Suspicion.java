package org.swathbook.escapes;

import java.util.List;
import org.swathbook.catalog.Site;

/**
 * What speaks for and against resistance, in words; never a diagnosis, which only a test can give.
 *
 * @param plainCauses those of the reasons against that explain the failure by the spraying itself
 * @param sites of the pass that should have controlled the plants at their height and its rate:
 *     what lives through another by the model's own figure is no sign against it
 * @param unknown what was not written down and would tell
 */
public record Suspicion(
    Level level,
    List<String> evidenceFor,
    List<String> evidenceAgainst,
    List<String> plainCauses,
    List<Site> sites,
    List<String> unknown) {

  /** How far resistance is suspected. */
  public enum Level {
    NOT_JUDGED("not judged"),
    NONE("none"),
    SLIGHT("slight"),
    MODERATE("moderate"),
    STRONG("strong");

    private final String word;

    Level(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  public Suspicion {
    evidenceFor = List.copyOf(evidenceFor);
    evidenceAgainst = List.copyOf(evidenceAgainst);
    plainCauses = List.copyOf(plainCauses);
    sites = List.copyOf(sites);
    unknown = List.copyOf(unknown);
  }

  /** Whether a sample should be sent and the field watched. */
  public boolean isWorthATest() {
    return level.compareTo(Level.MODERATE) >= 0;
  }
}
