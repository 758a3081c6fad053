package org.swathbook.rules.stewardship;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.Site;
import org.swathbook.ledger.Positions;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.FieldId;
import org.swathbook.rules.Rated;

/**
 * Sites that worked on a weed of a field in seasons gone by, through leaves or through the soil, by
 * the journal and what the response table rates.
 */
final class PastSites {
  private final Book book;
  private final FieldId field;
  private final WeedPressure weed;
  private final boolean foliar;

  /** A season of the journal with the sites that were effective in it. */
  record Season(int year, SortedSet<Site> sites) {
    boolean isAlone(Site site) {
      return sites.size() == 1 && sites.contains(site);
    }
  }

  PastSites(Book book, WeedPressure weed, boolean foliar) {
    this.book = book;
    this.field = weed.field();
    this.weed = weed;
    this.foliar = foliar;
  }

  /**
   * Seasons before the book's own, the latest first, up to the first of which the journal has
   * nothing. Seasons that are known to have been without the weed are left out: they end nothing.
   */
  List<Season> seasons() {
    List<Application> rows = book.journal().of(field);
    int first = rows.stream().mapToInt(Application::season).min().orElse(book.season());
    List<Season> out = new ArrayList<>();
    for (int year = book.season() - 1; year >= first; year--) {
      int of = year;
      List<Application> made = rows.stream().filter(a -> a.season() == of).toList();
      if (isWithoutWeed(year)) {
        continue;
      }
      if (made.isEmpty()) {
        break;
      }
      out.add(new Season(year, sites(made)));
    }
    return out;
  }

  /** The weeds of that season were written down, and it is not among them. */
  private boolean isWithoutWeed(int year) {
    return book.pastSeasons().stream()
        .filter(p -> p.field().equals(field) && p.season() == year)
        .anyMatch(p -> !p.weeds().isEmpty() && !p.weeds().contains(weed.weed().id()));
  }

  private SortedSet<Site> sites(List<Application> rows) {
    double least = 100 * (foliar ? book.house().effectiveSite() : book.house().effectiveSoilSite());
    SortedSet<Site> out = new TreeSet<>();
    for (Application row : rows) {
      Set<Position> positions = Positions.find(book.catalog(), row.crop(), row.position());
      for (ActiveDose a : row.dose().actives()) {
        Ingredient i = a.ingredient();
        if (pct(i, positions) >= least && !Rated.isResisted(weed, i)) {
          out.add(i.site());
        }
      }
    }
    return out;
  }

  private double pct(Ingredient i, Set<Position> positions) {
    if (!foliar) {
      return i.hasSoilActivity() ? rated(i, Response.Timing.PRE) : 0;
    }
    if (!i.hasFoliarActivity() || mayHaveBeenForTheSoil(i, positions)) {
      return 0;
    }
    boolean overCrop =
        positions.isEmpty()
            || positions.stream().anyMatch(p -> p.phase() == Position.Phase.IN_CROP);
    return rated(i, overCrop ? Response.Timing.POST : Response.Timing.BURNDOWN);
  }

  /** Before emergence an active that works in the soil too may have met no leaf at all. */
  private static boolean mayHaveBeenForTheSoil(Ingredient i, Set<Position> positions) {
    return i.hasSoilActivity()
        && !positions.isEmpty()
        && positions.stream().allMatch(p -> p == Position.PRE || p == Position.PREPLANT);
  }

  private double rated(Ingredient i, Response.Timing timing) {
    return book.catalog().response(weed.weed().id(), i.id(), timing).find().stream()
        .mapToDouble(Response::emaxPct)
        .findFirst()
        .orElse(0);
  }
}
