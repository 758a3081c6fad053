package org.swathbook.rules.label;

import java.util.List;
import org.swathbook.rules.RuleId;

/**
 * Rules of the whole book that are not written yet. They are named in every verdict, so that
 * nothing looks clear for want of them.
 */
public final class RulesToCome {
  private RulesToCome() {}

  /** A rule that is not written yet: its id, its scope and the question that it will ask. */
  public record Planned(RuleId id, String scope, String question) {

    /** Whether it needs facts of the day of spraying. */
    public boolean isOfTheDay() {
      return scope.equals("day");
    }

    /** The id as words: {@code carrier volume}. */
    public String words() {
      return id.value().replace('-', ' ');
    }
  }

  private static Planned of(String id, String scope, String question) {
    return new Planned(new RuleId(id), scope, question);
  }

  /** In the order of their ids. */
  public static final List<Planned> ALL =
      List.of(
          of("carrier-volume", "pass", "Is there enough spray volume for every partner?"),
          of("inversion", "day", "Does the air stand still in layers?"),
          of("rain-too-soon", "day", "Does rain wash it off before it is taken up?"),
          of("sensitive-neighbor", "day", "Does the wind blow toward a sensitive neighbor?"),
          of("setback-water", "use", "Is water closer than the label allows?"),
          of("tank-residue", "pass", "Is the tank clean of what injures this crop?"),
          of("temperature", "day", "Is it too hot or too cold for a partner?"),
          of("time-of-day", "day", "Is the hour one that the labels allow?"),
          of("water-quality", "day", "Does the water tie up a partner?"),
          of("wind", "day", "Is the wind within what every partner allows?"));
}
