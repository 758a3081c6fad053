package org.swathbook.growth;

import java.util.List;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropStage;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * How a crop goes from stage to stage. Heat counts from the planting day on; a stage by days counts
 * from the day of emergence. Stages are reached in their order, at the end of the day that brings
 * what they need.
 */
final class CropDevelopment {
  private final Parameters parameters;

  /**
   * @param up number of the stage that counts as emergence
   * @param never number of a day after the last one, which stands for an event that never comes
   */
  record Parameters(List<CropStage> stages, int up, int never) {
    static Parameters of(Crop crop, int days) {
      return new Parameters(
          crop.stages(), crop.findStage(crop.emergenceStage()).orElseThrow(), days);
    }
  }

  /**
   * @param day the day at whose end this is so
   * @param heat °C-days since planting
   * @param reached number of the last stage reached, -1 for none
   * @param sinceDay day on which it was reached
   * @param sinceHeat heat that it needs; the heat there was, for a stage by days
   * @param emergedOn day of emergence
   * @param countsFrom day from which stages by days count: that of emergence, unless a scouted
   *     stage has moved it
   */
  record State(
      int day,
      double heat,
      int reached,
      int sinceDay,
      double sinceHeat,
      int emergedOn,
      int countsFrom) {

    private State with(double newHeat, int newCountsFrom) {
      return new State(day, newHeat, reached, sinceDay, sinceHeat, emergedOn, newCountsFrom);
    }
  }

  /**
   * @param heat °C-days per day
   */
  record Rates(double heat) {}

  CropDevelopment(Parameters parameters) {
    this.parameters = parameters;
  }

  /** On the eve of planting. */
  State before(int plantingDay) {
    return new State(plantingDay - 1, 0, -1, plantingDay, 0, parameters.never, parameters.never);
  }

  /**
   * @param heat of the day by the crop's clock, °C-days
   */
  static Rates rates(double heat) {
    return new Rates(heat);
  }

  /**
   * The next day; it may bring more than one stage.
   *
   * @param notPast a stage that the crop is known not to be past yet: it waits on the eve of the
   *     next one
   */
  State integrate(State yesterday, Rates rates, int notPast) {
    int day = yesterday.day + 1;
    double heat = yesterday.heat + rates.heat;
    State now =
        new State(
            day,
            heat,
            yesterday.reached,
            yesterday.sinceDay,
            yesterday.sinceHeat,
            yesterday.emergedOn,
            yesterday.countsFrom);
    while (hasNext(now) && isReached(next(now), now)) {
      if (now.reached >= notPast) {
        return onTheEve(now);
      }
      now = advanced(now, heat);
    }
    return now;
  }

  private State advanced(State now, double heat) {
    int reached = now.reached + 1;
    boolean up = reached == parameters.up;
    return new State(
        now.day,
        heat,
        reached,
        now.day,
        next(now).degreeDays().orElse(heat),
        up ? now.day : now.emergedOn,
        up ? now.day : now.countsFrom);
  }

  private State onTheEve(State now) {
    CropStage next = next(now);
    return next.degreeDays().isPresent()
        ? now.with(Math.nextDown(next.degreeDays().getAsDouble()), now.countsFrom)
        : now.with(now.heat, now.day + 1 - next.daysAfterEmergence().getAsInt());
  }

  /**
   * A crop that was seen at a stage by the end of the day: what the model had not brought yet has
   * come today, and the clock goes on from the start of that stage.
   */
  State seenAt(int stage, State modelled) {
    State now = modelled;
    while (now.reached < stage) {
      CropStage next = next(now);
      now = advanced(now, Math.max(now.heat, next.degreeDays().orElse(now.heat)));
      if (next.daysAfterEmergence().isPresent()) {
        int from = now.day - next.daysAfterEmergence().getAsInt();
        now = now.with(now.heat, Math.min(now.countsFrom, from));
      }
    }
    return now;
  }

  /** Running stage number: the last stage and the share of the way to the next one. */
  double stage(State state) {
    double running = state.reached + (hasNext(state) ? share(next(state), state) : 0);
    // A share next to 1 would round up to a stage that is not reached.
    return Math.min(running, Math.nextDown(state.reached + 1.0));
  }

  private boolean hasNext(State state) {
    return state.reached + 1 < parameters.stages.size();
  }

  private CropStage next(State state) {
    return parameters.stages.get(state.reached + 1);
  }

  private static boolean isReached(CropStage next, State now) {
    return next.degreeDays().isPresent()
        ? now.heat >= next.degreeDays().getAsDouble()
        : now.day - now.countsFrom >= next.daysAfterEmergence().getAsInt();
  }

  /** Share of the way from the last stage to the next one, 0 to below 1. */
  private static double share(CropStage next, State now) {
    double done;
    double whole;
    if (next.degreeDays().isPresent()) {
      done = now.heat - now.sinceHeat;
      whole = next.degreeDays().getAsDouble() - now.sinceHeat;
    } else {
      done = now.day - now.sinceDay;
      whole = now.countsFrom + next.daysAfterEmergence().getAsInt() - now.sinceDay;
    }
    return whole > 0 ? Math.min(Math.max(0, done / whole), Math.nextDown(1.0)) : 0;
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.CROP,
                CropDevelopment.class,
                "stage",
                "heat from the planting day on, or days after emergence; between two stages by share",
                "Nielsen 2019; the other crops as the catalog cites them")
            .given(
                "corn 115 °F-days to VE, 82 a collar to V10, 50 a collar after, from the catalog"),
        ModelCard.of(
                ModelSection.CROP,
                CropDevelopment.class,
                "scouted stage",
                "the stage of that day; a crop the model has behind starts it that day, one the model has ahead waits on the eve of the next stage until then; heat or days go on from there",
                "definition")
            .given("scouting.csv"));
  }
}
