package org.swathbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.swathbook.book.Book;
import org.swathbook.catalog.WeedId;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Mix;
import org.swathbook.season.outcome.LayerSpan;
import org.swathbook.season.outcome.WalkedPasses;

/**
 * A day of a field's season after passes that were made before it, and what one more pass on that
 * day does. What stands there is walked once and is the same for every tank; only what a tank does
 * to it differs.
 */
public final class DayInSeason {
  private final Book book;
  private final Kernel kernel;
  private final List<PreparedPass> before;
  private final PassTiming timing;
  private final ProgramCensus census;

  private DayInSeason(Book book, Kernel kernel, List<PreparedPass> before, LocalDate date) {
    this.book = book;
    this.kernel = kernel;
    this.before = List.copyOf(before);
    this.timing = Timings.on(kernel.traces(), date);
    List<PreparedPass> all = passes(Mix.of(List.of()));
    this.census = new ProgramCensus(kernel, all);
    kernel.run(all, Optional.empty(), census);
  }

  /** A pass that was made on a day. */
  public record Made(LocalDate date, Mix mix) {}

  /**
   * @param before in the order of their dates, none after the day
   * @throws IllegalArgumentException when a date lies outside the field's season
   */
  public static DayInSeason of(Book book, Kernel kernel, List<Made> before, LocalDate date) {
    return new DayInSeason(
        book, kernel, before.stream().map(m -> kernel.made(m.mix(), m.date())).toList(), date);
  }

  public TraceSet traces() {
    return kernel.traces();
  }

  /** The day in every year. */
  public PassTiming timing() {
    return timing;
  }

  /** Passes before the day. */
  public int passesBefore() {
    return before.size();
  }

  /**
   * The passes made before and, last, a tank on the day, whatever its labels and the weather say.
   */
  public WalkedPasses with(Mix mix) {
    List<PreparedPass> all = passes(mix);
    LayerFinder finder = new LayerFinder(kernel, all);
    List<List<List<LayerSpan>>> byWeed = finder.layersByWeed();
    PassOutcomes describe = new PassOutcomes(book, kernel, all, census, byWeed);
    List<WalkedPasses.Year> years = new ArrayList<>();
    for (int y = 0; y < traces().years().size(); y++) {
      int year = y;
      years.add(
          new WalkedPasses.Year(
              all.stream().map(p -> p.day(year)).toList(),
              byWeed.stream().flatMap(w -> w.get(year).stream()).toList()));
    }
    return new WalkedPasses(IntStream.range(0, all.size()).mapToObj(describe::of).toList(), years);
  }

  /** What a tank on the day does to some weeds of the field, site by site. */
  public Map<WeedId, SitesMet.OfPass> sites(Mix mix, Collection<WeedId> weeds) {
    PreparedPass pass = kernel.made(mix, timing);
    PassSites sites = new PassSites(kernel, census);
    Map<WeedId, SitesMet.OfPass> out = new HashMap<>();
    for (int w = 0; w < traces().weeds().size(); w++) {
      WeedId id = traces().weeds().get(w).weed().id();
      if (weeds.contains(id)) {
        out.put(id, sites.of(pass, before.size(), w));
      }
    }
    return Map.copyOf(out);
  }

  private List<PreparedPass> passes(Mix mix) {
    List<PreparedPass> all = new ArrayList<>(before);
    all.add(kernel.made(mix, timing));
    return all;
  }
}
