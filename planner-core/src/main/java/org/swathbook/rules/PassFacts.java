package org.swathbook.rules;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Method;
import org.swathbook.catalog.Ordered;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.WeedId;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.SprayJob;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.WalkedPasses;

/**
 * A pass with the weeds that it meets.
 *
 * @param positions where in the season the median day belongs
 * @param actives in the order of the mix
 * @param job what is known of the day of spraying; empty in a plan
 * @param offers of the field
 */
public record PassFacts(
    Book book,
    TraceSet traces,
    WalkedPasses season,
    PassOutcome pass,
    Set<Position> positions,
    List<ActiveUse> actives,
    Optional<SprayJob> job,
    TankOffers offers) {

  public PassFacts {
    positions = Ordered.set(positions);
    actives = List.copyOf(actives);
  }

  public Field field() {
    return traces.field();
  }

  public About about() {
    return About.PROGRAM.withPass(pass.index());
  }

  /**
   * The field's listing of a weed.
   *
   * @throws IllegalArgumentException when the field does not have the weed
   */
  public WeedPressure pressure(WeedId weed) {
    return traces.weeds().stream()
        .filter(w -> w.weed().id().equals(weed))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no weed " + weed));
  }

  /** How it is sprayed; a planned pass is broadcast. */
  public Method method() {
    return job.map(SprayJob::method).orElse(Method.BROADCAST);
  }

  public boolean isInCrop() {
    return positions.stream().anyMatch(p -> p.phase() == Position.Phase.IN_CROP);
  }

  /**
   * Effective foliar sites that this pass owes a weed, as the house asks and one tank can bring.
   *
   * @param effective that it has
   */
  public int foliarSitesAsked(PassWeed weed, int effective) {
    return offers.foliarSitesAsked(pressure(weed.weed()), this, weed.stands(), effective);
  }

  /**
   * Effective soil sites that this pass owes a weed, as the house asks and the field can have.
   *
   * @param wanted what the house would have, 0 when the pass lays no layer
   * @param effective that it has
   */
  public int soilSitesAsked(PassWeed weed, int wanted, int effective) {
    return offers.soilSitesAsked(pressure(weed.weed()), wanted, effective);
  }

  /** Which figures of the response table tell what leaves take up at this pass. */
  public Response.Timing foliarTiming() {
    return isInCrop() ? Response.Timing.POST : Response.Timing.BURNDOWN;
  }
}
