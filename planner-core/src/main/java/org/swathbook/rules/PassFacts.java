package org.swathbook.rules;

import java.util.List;
import java.util.Map;
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
   * Effective foliar sites that this pass owes each driver weed that stands, as the house asks and
   * one tank can bring.
   */
  public Map<WeedId, Integer> foliarSitesAsked() {
    return offers.foliarSitesAsked(this);
  }

  /** The same of one of them if no other stood: more where one tank cannot carry them together. */
  public int foliarSitesAskedAlone(WeedId weed) {
    return offers.foliarSitesAsked(this, weed);
  }

  /** Whether it rests on one foliar site alone, as the last such pass before it did on the same. */
  public boolean restsOnTheSameAgain(PassWeed weed) {
    return HouseTests.isLoneAgain(
        HouseTests.sites(weed), HouseTests.loneSiteBefore(season, pass.index(), weed.weed()));
  }

  /**
   * Effective soil sites that this pass owes a weed, as the house asks and the field can have; 0
   * when it lays no layer.
   */
  public int soilSitesAsked(WeedId weed) {
    return offers.soilSitesAsked(season, pass.index(), pressure(weed));
  }

  /** Which figures of the response table tell what leaves take up at this pass. */
  public Response.Timing foliarTiming() {
    return isInCrop() ? Response.Timing.POST : Response.Timing.BURNDOWN;
  }
}
