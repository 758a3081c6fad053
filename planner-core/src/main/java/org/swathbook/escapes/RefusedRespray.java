package org.swathbook.escapes;

import org.swathbook.catalog.Ingredient;
import org.swathbook.rules.Finding;

/**
 * An active that would work on the survivors and may or should not be sprayed.
 *
 * @param why in a sentence
 * @param brief what sets it apart from others of the same reason; empty when nothing does
 */
public record RefusedRespray(Ingredient active, Reason reason, String why, String brief) {

  /** Kinds of reasons, in the order in which they are told. */
  public enum Reason {
    JUST_FAILED(
        "just-failed", "Its site has just failed here, and nothing in the spraying explains it"),
    TOO_LITTLE("too-little", "It would control less than half of the survivors"),
    NOT_FOR_CROP("not-for-crop", "Its label is not for this crop at this time"),
    STAGE("stage", "Outside the stage or height of its label"),
    USED_UP("used-up", "Caps, counts or intervals of the season stand against it"),
    HARVEST("harvest", "Too near to harvest or to the next crop"),
    SEASON_OVER("season-over", "The season is over before it could go on"),
    OTHER("other", "Other limits of its label");

    private final String word;
    private final String title;

    Reason(String word, String title) {
      this.word = word;
      this.title = title;
    }

    public String word() {
      return word;
    }

    public String title() {
      return title;
    }
  }

  static RefusedRespray failed(Ingredient active) {
    return new RefusedRespray(
        active,
        Reason.JUST_FAILED,
        "site " + active.site() + " has just failed here and nothing in the spraying explains it",
        "site " + active.site());
  }

  static RefusedRespray tooLittle(Ingredient active, double controlPct) {
    String about = "about " + (long) Math.floor(controlPct) + " %";
    return new RefusedRespray(
        active, Reason.TOO_LITTLE, "it would control only " + about + " of the survivors", about);
  }

  static RefusedRespray seasonOver(Ingredient active) {
    return new RefusedRespray(
        active, Reason.SEASON_OVER, "the season is over before it could go on", "");
  }

  static RefusedRespray noRate(Ingredient active) {
    String why = "no rate of it fits this field on that day";
    return new RefusedRespray(active, Reason.OTHER, why, why);
  }

  /** By what stands against it on the first sensible day. */
  static RefusedRespray of(Ingredient active, Finding block) {
    Reason reason =
        switch (block.rule().value()) {
          case "crop-not-listed", "trait-needed" -> Reason.NOT_FOR_CROP;
          case "stage-window" -> Reason.STAGE;
          case "annual-cap", "application-count", "repeat-interval" -> Reason.USED_UP;
          case "harvest-interval", "next-crop-interval", "grazing-feed" -> Reason.HARVEST;
          default -> Reason.OTHER;
        };
    String brief =
        switch (reason) {
          case NOT_FOR_CROP -> block.limit().equals("refused") ? "" : "only " + block.limit();
          case STAGE -> block.limit();
          default -> block.message();
        };
    return new RefusedRespray(active, reason, block.message(), brief);
  }
}
