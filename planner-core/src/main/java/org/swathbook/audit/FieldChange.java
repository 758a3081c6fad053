package org.swathbook.audit;

import java.util.List;
import java.util.Optional;
import org.swathbook.book.Field;
import org.swathbook.book.WeedPressure;
import org.swathbook.measure.Money;

/**
 * What one change would have done on a field in the last season of its journal.
 *
 * @param field as it was in that season
 * @param season 0 when the field has none that can be walked
 * @param changes what is changed, pass by pass, in words
 * @param why it is forbidden, not needed, not tried or no better, and what the labels refuse of it
 * @param costPerAcre products at today's prices, and trips, that come to it; empty when nothing is
 *     changed
 * @param weeds driver weeds before and after; empty when nothing is changed
 * @param notKnown limits of what comes to it that the catalog does not state
 */
public record FieldChange(
    Field field,
    int season,
    Outcome outcome,
    List<String> changes,
    List<String> why,
    Optional<Money> costPerAcre,
    List<WeedEffect> weeds,
    List<String> notKnown) {

  /** How a change ends on a field. */
  public enum Outcome {
    /** Allowed, and better for a driver weed. */
    IMPROVED("improved"),
    /** Allowed, and no better, or worse for some driver weed. */
    NO_BETTER("no better"),
    /** A label forbids every way to make it. */
    FORBIDDEN("forbidden"),
    /** It was so already. */
    NOT_NEEDED("not needed"),
    /** The field, its weeds or its crop give no occasion, or its season cannot be walked. */
    NOT_TRIED("not tried");

    private final String word;

    Outcome(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  /** Figures of a season for a weed, in percent; {@code withoutPct} with its weakest site gone. */
  public record Figures(double fewerThanTwoPct, double controlPct, double withoutPct) {}

  /** A driver weed as the season was, and as it would have been. */
  public record WeedEffect(WeedPressure weed, Figures before, Figures after) {}

  public FieldChange {
    changes = List.copyOf(changes);
    why = List.copyOf(why);
    weeds = List.copyOf(weeds);
    notKnown = List.copyOf(notKnown);
  }

  /** Cost on the whole field. */
  public Optional<Money> costOfField() {
    return costPerAcre.map(c -> Money.ofDollars(c.dollars() * field.acres()));
  }
}
