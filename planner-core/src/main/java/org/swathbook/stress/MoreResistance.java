package org.swathbook.stress;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.swathbook.book.Book;
import org.swathbook.book.Resistance;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Site;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Money;
import org.swathbook.season.Kernel;
import org.swathbook.season.PreparedPass;
import org.swathbook.season.Score;
import org.swathbook.season.SeasonWalk;

/**
 * One resistance more than believed: all plants of a driver weed resist a site that the program
 * relies on against it, each such weed and site in turn; the milder half of it, half of the plants.
 * A site is relied on when the weed is controlled less with it gone; one that is listed as resisted
 * already is no news. It is known before the season, so that everything still to come may change.
 */
record MoreResistance() implements StressCase {
  /** Control that a site's loss takes, in points, from which it is relied on: default, ours. */
  private static final double RELIED_ON = 0.05;

  @Override
  public String name() {
    return "one-more-resistance";
  }

  @Override
  public Posed pose(Situation plain) {
    String title = "one more resistance";
    TreeSet<Site> sites = new TreeSet<>();
    plain
        .outcome()
        .passes()
        .forEach(p -> p.mix().actives().forEach(a -> sites.add(a.ingredient().site())));
    Kernel kernel = Kernel.of(plain.book(), plain.traces());
    List<PreparedPass> passes = SeasonWalk.prepare(kernel, plain.program());
    Score with = kernel.score(passes);
    List<Stressed> out = new ArrayList<>();
    for (int w = 0; w < plain.traces().weeds().size(); w++) {
      WeedPressure weed = plain.traces().weeds().get(w);
      for (Site site : sites) {
        if (weed.driver().isDriver()
            && !isListed(weed, site)
            && with.controlPct(w) - kernel.score(passes, site).controlPct(w) >= RELIED_ON) {
          Stressed half = resisting(plain, w, site, 0.5, Optional.empty());
          out.add(resisting(plain, w, site, 1, Optional.of(half)));
        }
      }
    }
    return out.isEmpty()
        ? Posed.not(title, "the program relies on no site against a driver weed")
        : Posed.of(title, out, List.of());
  }

  private static boolean isListed(WeedPressure weed, Site site) {
    return weed.listed().stream()
        .anyMatch(r -> !r.isWatched() && r.site().filter(site::equals).isPresent());
  }

  private static Stressed resisting(
      Situation plain, int weed, Site site, double share, Optional<Stressed> milder) {
    WeedPressure changed =
        plain
            .traces()
            .weeds()
            .get(weed)
            .resisting(new Resistance(Optional.of(site), Optional.empty(), share, "assumed"));
    Book book = plain.book().withWeed(changed);
    List<WeedPressure> weeds = new ArrayList<>(plain.traces().weeds());
    weeds.set(weed, changed);
    TraceSet traces =
        new TraceSet(plain.field(), plain.traces().crop(), weeds, plain.traces().years());
    return new Stressed(
        changed.weed().name() + ", site " + site,
        book,
        traces,
        plain.program(),
        Stressed.all(plain.program()),
        plain.today(),
        List.of(),
        Money.ZERO,
        Optional.empty(),
        milder);
  }
}
