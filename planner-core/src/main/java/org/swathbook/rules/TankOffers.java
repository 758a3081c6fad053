package org.swathbook.rules;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Book;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Method;
import org.swathbook.catalog.Ordered;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.WeedId;
import org.swathbook.control.ColdDays;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.TraceSet;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.WalkedPasses;

/**
 * How many foliar sites a house can ask of one tank against the driver weeds of a field. The house
 * names a number for each; what is asked of a tank is no more than can stand in one (defaults,
 * ours):
 *
 * <ul>
 *   <li>Crop, traits, listed resistance, cold, and what the labels say of partners and droplets may
 *       leave fewer, one at the least: the season brings the others in passes of their own, and has
 *       to hold with any one site gone.
 *   <li>So a pass that rests on one site alone, and on the same one as the last such pass before
 *       it, owes one more where another is to be had: what lives through the one is to meet the
 *       other.
 *   <li>A tank has room for the house's number of products, and the soil sites that its layer owes
 *       take one each. Where the rest cannot carry all driver weeds, the last of them may miss what
 *       no tank could bring as well, down to one site.
 * </ul>
 *
 * <p>Keeps what it computes; several threads may ask.
 */
public final class TankOffers {
  private final Book book;
  private final TraceSet traces;
  private final ColdDays cold;
  private final SoilOffers soil;
  private final Map<Asked, Brought> known = new ConcurrentHashMap<>();

  /**
   * What is to be had on some weeds.
   *
   * @param inOneTank by weed: sites, up to those wanted, that one tank can bring on it
   * @param together the same on all of them at once, added up
   * @param inAnyTank by weed: the same of tanks one after another
   */
  private record Brought(List<Integer> inOneTank, int together, List<Integer> inAnyTank) {}

  private record Asked(
      List<WeedId> weeds,
      LocalDate planned,
      Set<Position> positions,
      Method method,
      boolean made,
      int room) {
    // Written out, as in every key that is hashed at a start: see RuleId.
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Asked o
          && weeds.equals(o.weeds)
          && planned.equals(o.planned)
          && positions.equals(o.positions)
          && method == o.method
          && made == o.made
          && room == o.room;
    }

    @Override
    public int hashCode() {
      int hash = 31 * (31 * weeds.hashCode() + planned.hashCode()) + positions.hashCode();
      return 31 * (31 * (31 * hash + method.hashCode()) + (made ? 1 : 0)) + room;
    }
  }

  public TankOffers(Book book, TraceSet traces) {
    this.book = book;
    this.traces = traces;
    this.cold = ColdDays.of(traces);
    this.soil = new SoilOffers(book, traces);
  }

  /**
   * Effective soil sites that a pass owes a driver weed; see {@link SoilOffers}.
   *
   * @param wanted what the house would have of it, 0 when it lays no layer
   */
  public int soilSitesAsked(WeedPressure weed, int wanted) {
    return soil.asked(weed, wanted);
  }

  /** The same of a walked pass. */
  public int soilSitesAsked(WalkedPasses season, int pass, WeedPressure weed) {
    return soilSitesAsked(
        weed, HouseTests.soilSitesWanted(book.house(), season, pass, weed.weed().id()));
  }

  /** Soil sites that hold against the weed by themselves at some time of the season. */
  public SortedSet<Site> soilSites(WeedPressure weed) {
    return soil.sites(weed);
  }

  /**
   * Effective foliar sites that a broadcast pass to come owes each driver weed that stands.
   *
   * @param standing in the order of the field's list
   * @param soilSites that the layer of the pass owes the driver weed to which it owes most; 0 when
   *     it lays none
   */
  public int[] foliarSitesAsked(List<StandingDriver> standing, PassTiming timing, int soilSites) {
    return haveAllWanted(standing)
        ? asTheHouseSays(standing)
        : asked(
            standing, timing, PassPositions.of(traces, timing), Method.BROADCAST, false, soilSites);
  }

  /**
   * The same of a walked pass, by weed; a weed that does not stand, or drives nothing, is not in
   * it.
   */
  public Map<WeedId, Integer> foliarSitesAsked(WalkedPasses season, PassOutcome pass) {
    List<StandingDriver> standing = StandingDriver.of(season, pass, traces.weeds());
    return byWeed(
        standing, foliarSitesAsked(standing, pass.timing(), soilSites(season, pass.index())));
  }

  /** The same of a pass as it is judged; one that is made is past the cold. */
  Map<WeedId, Integer> foliarSitesAsked(PassFacts facts) {
    return foliarSitesAsked(facts, traces.weeds());
  }

  private Map<WeedId, Integer> foliarSitesAsked(PassFacts facts, List<WeedPressure> weeds) {
    PassOutcome pass = facts.pass();
    List<StandingDriver> standing = StandingDriver.of(facts.season(), pass, weeds);
    return byWeed(
        standing,
        haveAllWanted(standing)
            ? asTheHouseSays(standing)
            : asked(
                standing,
                pass.timing(),
                facts.positions(),
                facts.method(),
                pass.made(),
                soilSites(facts.season(), pass.index())));
  }

  /** The same as if no other driver weed stood; 0 when this one does not. */
  int foliarSitesAsked(PassFacts facts, WeedId weed) {
    return foliarSitesAsked(
            facts, traces.weeds().stream().filter(w -> w.weed().id().equals(weed)).toList())
        .getOrDefault(weed, 0);
  }

  private static Map<WeedId, Integer> byWeed(List<StandingDriver> standing, int[] asked) {
    Map<WeedId, Integer> out = new HashMap<>();
    for (int d = 0; d < asked.length; d++) {
      out.put(standing.get(d).weed().weed().id(), asked[d]);
    }
    return out;
  }

  /** Soil sites that a walked pass owes the driver weed to which it owes most. */
  private int soilSites(WalkedPasses season, int pass) {
    return traces.weeds().stream()
        .filter(w -> w.driver().isDriver())
        .mapToInt(w -> soilSitesAsked(season, pass, w))
        .max()
        .orElse(0);
  }

  /** Then nothing is looked up. */
  private boolean haveAllWanted(List<StandingDriver> standing) {
    int wanted = book.house().minFoliarSites();
    return standing.stream().allMatch(s -> s.has() >= wanted);
  }

  private int[] asTheHouseSays(List<StandingDriver> standing) {
    int[] out = new int[standing.size()];
    Arrays.fill(out, book.house().minFoliarSites());
    return out;
  }

  private int[] asked(
      List<StandingDriver> standing,
      PassTiming timing,
      Set<Position> positions,
      Method method,
      boolean made,
      int soilSites) {
    int room = Math.max(1, book.house().maxProducts() - soilSites);
    List<WeedId> weeds = standing.stream().map(s -> s.weed().weed().id()).toList();
    Brought brought =
        known.computeIfAbsent(
            new Asked(weeds, timing.planned(), Ordered.set(positions), method, made, room),
            k -> brought(standing, timing, k));
    int[] out = new int[standing.size()];
    int missed = 0;
    for (int d = 0; d < out.length; d++) {
      // One is asked even where there is none: what the pass leaves standing is to be seen.
      out[d] = Math.min(wanted(), Math.max(1, brought.inOneTank.get(d)));
      missed += out[d];
    }
    spare(out, standing, missed - brought.together);
    for (int d = 0; d < out.length; d++) {
      StandingDriver s = standing.get(d);
      if (s.restsOnTheSameAgain() && out[d] == 1 && brought.inAnyTank.get(d) > 1) {
        out[d] = 2;
      }
    }
    return out;
  }

  /** Lets the last ones miss what no tank brings beside the rest, down to one site each. */
  private static void spare(int[] asked, List<StandingDriver> standing, int most) {
    int left = most;
    for (int d = asked.length - 1; d >= 0 && left > 0; d--) {
      int less = Math.min(left, asked[d] - Math.max(1, standing.get(d).has()));
      if (less > 0) {
        asked[d] -= less;
        left -= less;
      }
    }
  }

  private int wanted() {
    return book.house().minFoliarSites();
  }

  private Brought brought(List<StandingDriver> standing, PassTiming timing, Asked pass) {
    FoliarOffers offers =
        FoliarOffers.of(
            book,
            traces,
            timing,
            standing.stream().map(StandingDriver::weed).toList(),
            pass.positions,
            pass.method,
            !pass.made && cold.isMostly(timing),
            wanted());
    int[] all = IntStream.range(0, standing.size()).toArray();
    return new Brought(
        Arrays.stream(all).mapToObj(w -> offers.inOneTank(pass.room, w)).toList(),
        offers.inOneTank(pass.room, all),
        Arrays.stream(all).mapToObj(offers::inAnyTank).toList());
  }
}
