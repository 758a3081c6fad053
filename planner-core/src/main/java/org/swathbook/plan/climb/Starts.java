package org.swathbook.plan.climb;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.swathbook.book.HouseRules;
import org.swathbook.catalog.Site;
import org.swathbook.plan.choice.Strengths;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Evaluator;
import org.swathbook.plan.draft.PlanSpace;
import org.swathbook.plan.draft.Stop;

/**
 * Programs from which to climb: the shapes in which advisers think (a residual at planting and a
 * post some weeks later, with a burndown before or a second post after), each tank filled so that
 * the driver weeds meet enough sites.
 */
public final class Starts {
  /** Days from the last post to one beside it (default, ours). */
  private static final List<Integer> APART_DAYS = List.of(-15, -6, 9, 15);

  private final PlanSpace space;
  private final Strengths strengths;
  private final HouseRules house;
  private final Evaluator evaluator;

  private final int firstDate;

  public Starts(PlanSpace space, Strengths strengths, HouseRules house, Evaluator evaluator) {
    this(space, strengths, house, evaluator, 0);
  }

  /**
   * @param firstDate first date on which anything can still be sprayed
   */
  public Starts(
      PlanSpace space, Strengths strengths, HouseRules house, Evaluator evaluator, int firstDate) {
    this.firstDate = firstDate;
    this.space = space;
    this.strengths = strengths;
    this.house = house;
    this.evaluator = evaluator;
  }

  /** Distinct drafts, in a fixed order; the empty program is one. */
  public List<Draft> all() {
    Set<Draft> out = new LinkedHashSet<>();
    Draft pre = filled(Draft.EMPTY, 0, 0, house.minSoilSitesFirst());
    for (int post : new int[] {15, 24, 30, 39}) {
      out.add(post(pre, post));
    }
    Draft burndown = filled(Draft.EMPTY, -9, house.minFoliarSites(), 0);
    Draft burndownPre = filled(burndown, 0, 0, house.minSoilSitesFirst());
    out.add(post(burndownPre, 30));
    out.add(post(filled(Draft.EMPTY, -9, house.minFoliarSites(), house.minSoilSitesFirst()), 27));
    for (int early : new int[] {-30, -21, -3}) {
      out.add(filled(Draft.EMPTY, early, house.minFoliarSites(), house.minSoilSitesFirst()));
    }
    if (firstDate > 0) {
      underWay(out);
    }
    out.add(Draft.EMPTY);
    return List.copyOf(out);
  }

  /**
   * The draft with a post more, before or after its last pass, that has no foliar site of that
   * pass, where labels let fewer sites than the house wants into it; and the same without each of
   * the passes before it, for what the post is to use may be used up there. No single step leads to
   * two posts that are unlike from one that a like one does not serve.
   */
  List<Draft> alternating(Draft draft) {
    List<Stop> stops = draft.stops();
    if (stops.isEmpty()) {
      return List.of();
    }
    Stop last = stops.get(stops.size() - 1);
    int day = space.grid().daysFromPlanting(last.date());
    if (day <= 0 || missing(last.options(), house.minFoliarSites(), 0) == 0) {
      return List.of();
    }
    Set<Site> has = new TreeSet<>();
    last.options().stream().filter(this::isFoliar).forEach(o -> has.add(site(o)));
    Set<Draft> out = new LinkedHashSet<>();
    for (int less = -1; less < stops.size() - 1; less++) {
      Draft before = less < 0 ? draft : draft.without(less);
      for (int apart : APART_DAYS) {
        int foliar = house.minFoliarSites();
        int soil = house.minSoilSitesOverlap();
        if (day + apart > 0) {
          out.add(
              filled(
                  before, day + apart, foliar, soil, o -> !isFoliar(o) || !has.contains(site(o))));
        }
      }
      out.remove(before);
    }
    return List.copyOf(out);
  }

  private boolean isFoliar(int option) {
    return IntStream.range(0, strengths.drivers().size())
        .anyMatch(d -> strengths.foliar(option, d));
  }

  private Site site(int option) {
    return space.option(option).dose().actives().get(0).ingredient().site();
  }

  /** Those that score best, the best first; all in their own order when there are no more. */
  public List<Draft> best(int most) {
    List<Draft> all = all();
    return all.size() <= most ? all : Search.inOrder(all, evaluator::quickGoal).subList(0, most);
  }

  /** In a season that has begun: a pass soon, with another to follow. */
  private void underWay(Set<Draft> out) {
    for (int wait : new int[] {0, 7, 14}) {
      if (firstDate + wait < space.grid().size()) {
        int day = space.grid().daysFromPlanting(firstDate + wait);
        Draft soon = post(Draft.EMPTY, day);
        out.add(soon);
        out.add(filled(Draft.EMPTY, day, house.minFoliarSites(), 0));
        out.add(post(soon, day + 18));
      }
    }
  }

  /**
   * The draft with one more whole pass, on days over the season: single doses seldom pay for their
   * own trip.
   *
   * @param firstPost days from planting before which no post is added
   */
  List<Draft> withOneMorePass(Draft draft, int firstPost) {
    Set<Draft> out = new LinkedHashSet<>();
    for (int day : new int[] {-21, -9}) {
      out.add(filled(draft, day, house.minFoliarSites(), 0));
      out.add(filled(draft, day, house.minFoliarSites(), house.minSoilSitesOverlap()));
    }
    out.add(filled(draft, -3, 0, house.minSoilSitesFirst()));
    for (int day = firstPost; day <= 51; day += 6) {
      out.add(post(draft, day));
      out.add(filled(draft, day, house.minFoliarSites(), 0));
    }
    out.remove(draft);
    return List.copyOf(out);
  }

  private Draft post(Draft before, int day) {
    return filled(before, day, house.minFoliarSites(), house.minSoilSitesOverlap());
  }

  /**
   * Adds a tank on a day: dose by dose the one that brings the most missing sites, then the best
   * quick score.
   */
  private Draft filled(Draft before, int day, int foliarWanted, int soilWanted) {
    return filled(before, day, foliarWanted, soilWanted, o -> true);
  }

  /**
   * @param may whether a dose may be used
   */
  private Draft filled(Draft before, int day, int foliarWanted, int soilWanted, IntPredicate may) {
    int date = space.grid().placeOf(day);
    if (!space.hasRoom(before, date) || before.stops().size() >= space.maxPasses()) {
      return before;
    }
    List<Integer> tank = new ArrayList<>();
    while (tank.size() < space.maxProducts()) {
      int best = best(fewestMissing(before, date, tank, foliarWanted, soilWanted, may));
      if (best < 0) {
        break;
      }
      tank.add(best);
    }
    return tank.isEmpty() ? before : before.with(new Stop(date, tank));
  }

  /** A dose more and the draft with it. */
  private record Filling(int option, Draft draft) {}

  /** Of the doses that bring a missing site those that leave fewest missing, in their order. */
  private List<Filling> fewestMissing(
      Draft before,
      int date,
      List<Integer> tank,
      int foliarWanted,
      int soilWanted,
      IntPredicate may) {
    List<Filling> out = new ArrayList<>();
    int fewest = missing(tank, foliarWanted, soilWanted) - 1;
    for (int option : space.legalOn(date)) {
      if (!may.test(option) || !space.takes(date, tank, option)) {
        continue;
      }
      List<Integer> with = new ArrayList<>(tank);
      with.add(option);
      int m = missing(with, foliarWanted, soilWanted);
      if (m > fewest) {
        continue;
      }
      Draft draft = before.with(new Stop(date, with));
      if (evaluator.legal(draft)) {
        if (m < fewest) {
          out.clear();
          fewest = m;
        }
        out.add(new Filling(option, draft));
      }
    }
    return out;
  }

  /** The one of the best quick score, the first of equal ones; -1 for none. */
  private int best(List<Filling> fillings) {
    int best = -1;
    double bestScore = Double.NEGATIVE_INFINITY;
    evaluator.expect(fillings.stream().map(Filling::draft).toList());
    for (Filling f : fillings) {
      double score = evaluator.quick(f.draft());
      if (score > bestScore) {
        best = f.option();
        bestScore = score;
      }
    }
    return best;
  }

  private int missing(List<Integer> tank, int foliarWanted, int soilWanted) {
    return strengths.missing(tank, foliarWanted, soilWanted, this::site);
  }
}
