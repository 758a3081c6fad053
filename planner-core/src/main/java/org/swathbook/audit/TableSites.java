package org.swathbook.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import org.swathbook.book.Application;
import org.swathbook.book.Biotype;
import org.swathbook.book.Book;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.Site;
import org.swathbook.control.ResistanceFactors;
import org.swathbook.ledger.Positions;
import org.swathbook.program.ActiveDose;
import org.swathbook.rules.Rated;
import org.swathbook.season.outcome.SiteControl;

/**
 * What the sites of a pass do to a weed by the response table alone: at the high rate, on plants of
 * the rated height, every partner by itself.
 */
final class TableSites {
  private final Book book;
  private final WeedPressure weed;

  TableSites(Book book, WeedPressure weed) {
    this.book = book;
    this.weed = weed;
  }

  List<SiteControl> foliar(List<Application> pass) {
    return best(pass, false);
  }

  List<SiteControl> soil(List<Application> pass) {
    return best(pass, true);
  }

  private List<SiteControl> best(List<Application> pass, boolean soil) {
    TreeMap<Site, SiteControl> out = new TreeMap<>();
    double least = soil ? book.house().effectiveSoilSite() : book.house().effectiveSite();
    for (Application row : pass) {
      Set<Position> positions = Positions.find(book.catalog(), row.crop(), row.position());
      for (ActiveDose a : row.dose().actives()) {
        Ingredient i = a.ingredient();
        if (soil ? !worksInSoil(i, positions) : !meetsLeaves(i, positions)) {
          continue;
        }
        double pct = felt(i, soil) * rated(i, timing(soil, positions));
        boolean struck = Rated.isResisted(weed, i);
        SiteControl one =
            new SiteControl(
                i.site(),
                i.id(),
                pct,
                struck,
                weed.isOnlyWatched(i),
                false,
                !struck && pct >= 100 * least);
        out.merge(i.site(), one, (x, y) -> y.controlPct() > x.controlPct() ? y : x);
      }
    }
    return new ArrayList<>(out.values());
  }

  /** After harvest nothing is left to be kept clean. */
  private static boolean worksInSoil(Ingredient i, Set<Position> positions) {
    return i.hasSoilActivity() && !isAll(positions, Position.Phase.AFTER_HARVEST);
  }

  /** Before emergence an active that works in the soil too may have met no leaf at all. */
  private static boolean meetsLeaves(Ingredient i, Set<Position> positions) {
    boolean forTheSoil =
        i.hasSoilActivity()
            && !positions.isEmpty()
            && positions.stream().allMatch(p -> p == Position.PRE || p == Position.PREPLANT);
    return i.hasFoliarActivity() && !forTheSoil;
  }

  private static Response.Timing timing(boolean soil, Set<Position> positions) {
    if (soil) {
      return Response.Timing.PRE;
    }
    boolean overCrop =
        positions.isEmpty()
            || positions.stream().anyMatch(p -> p.phase() == Position.Phase.IN_CROP);
    return overCrop ? Response.Timing.POST : Response.Timing.BURNDOWN;
  }

  private static boolean isAll(Set<Position> positions, Position.Phase phase) {
    return !positions.isEmpty() && positions.stream().allMatch(p -> p.phase() == phase);
  }

  private double rated(Ingredient i, Response.Timing timing) {
    return book.catalog().response(weed.weed().id(), i.id(), timing).find().stream()
        .mapToDouble(Response::emaxPct)
        .findFirst()
        .orElse(0);
  }

  private double felt(Ingredient i, boolean soil) {
    double sum = 0;
    for (Biotype b : weed.biotypes()) {
      sum +=
          b.share()
              * (soil
                  ? ResistanceFactors.soil(weed.weed(), b, i)
                  : ResistanceFactors.foliar(weed.weed(), b, i));
    }
    return Math.min(1, sum);
  }
}
