package org.swathbook.plan.bound;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.swathbook.book.Book;
import org.swathbook.book.HouseRules;
import org.swathbook.catalog.Site;
import org.swathbook.plan.choice.DoseOption;
import org.swathbook.plan.draft.FieldEvaluator;
import org.swathbook.plan.draft.PlanSpace;
import org.swathbook.plan.draft.Stop;
import org.swathbook.rules.HouseTests;
import org.swathbook.season.Kernel;
import org.swathbook.season.PreparedPass;
import org.swathbook.season.Reach;
import org.swathbook.season.SeasonReach;
import org.swathbook.season.SeasonWalk;

/** Every dose on every day of which a program may be made. */
final class AllDoses {
  private final PlanSpace space;
  private final HouseRules house;
  private final double passCost;
  private final SeasonReach reach;
  private final List<Day> days;
  private final int years;
  private final int[] yearOf;
  private final Map<Together, Reach> strongest = new HashMap<>();

  private record Together(int day, List<Integer> options, Set<Integer> missed) {}

  private AllDoses(PlanSpace space, Book book, SeasonReach reach, List<Day> days, int years) {
    this.space = space;
    this.house = book.house();
    this.passCost = book.passCost().dollars();
    this.reach = reach;
    this.days = List.copyOf(days);
    this.years = years;
    this.yearOf = reach.years();
  }

  /**
   * @param withinHouseRules whether programs have to meet the house rules: then a dose that misses
   *     its window too often by itself is in none
   */
  static AllDoses of(
      Book book, PlanSpace space, FieldEvaluator evaluator, boolean withinHouseRules) {
    Kernel kernel = evaluator.kernel();
    int years = kernel.traces().years().size();
    List<Stop> stops = new ArrayList<>();
    List<PreparedPass> passes = new ArrayList<>();
    for (int date = 0; date < space.grid().size(); date++) {
      for (int option : space.legalOn(date)) {
        Stop stop = new Stop(date, List.of(option));
        PreparedPass pass = evaluator.prepare(stop);
        double windows = SeasonWalk.windowConfidencePct(List.of(pass), years);
        if (!withinHouseRules || !HouseTests.isShortOfWindows(book.house(), windows)) {
          stops.add(stop);
          passes.add(pass);
        }
      }
    }
    SeasonReach reach =
        SeasonReach.of(kernel, evaluator.passesMade().passes(), passes, space.maxPasses());
    List<Day> days = new ArrayList<>();
    int from = 0;
    while (from < stops.size()) {
      int to = from + 1;
      while (to < stops.size() && stops.get(to).date() == stops.get(from).date()) {
        to++;
      }
      List<Part> parts = new ArrayList<>();
      for (int i = from; i < to; i++) {
        DoseOption option = space.option(stops.get(i).options().get(0));
        parts.add(
            new Part(
                days.size(),
                option,
                siteOf(option),
                Set.copyOf(passes.get(i).missedYears()),
                reach.of(i)));
      }
      days.add(
          new Day(stops.get(from).date(), parts, reach.lossReach(from), reach.ratedReach(from)));
      from = to;
    }
    return new AllDoses(space, book, reach, days, years);
  }

  private static Site siteOf(DoseOption option) {
    return option.dose().actives().get(0).ingredient().site();
  }

  List<Day> days() {
    return days;
  }

  SeasonReach reach() {
    return reach;
  }

  int cohorts() {
    return reach.cohorts();
  }

  int years() {
    return years;
  }

  /** Place of a cohort's year. */
  int yearOf(int cohort) {
    return yearOf[cohort];
  }

  /** Dollars on an acre. */
  double passCost() {
    return passCost;
  }

  int maxPasses() {
    return space.maxPasses();
  }

  int maxProducts() {
    return space.maxProducts();
  }

  /** Sites of all doses. */
  Set<Site> sites() {
    TreeSet<Site> out = new TreeSet<>();
    days.forEach(d -> d.parts().forEach(p -> out.add(p.site())));
    return out;
  }

  /** Whether two parts of one day may stand in one tank. */
  boolean mix(Part a, Part b) {
    return space.takes(days.get(a.day()).date(), List.of(a.option().index()), b.option().index());
  }

  /**
   * What parts of one tank and one site do together; the same parts are met over and over.
   *
   * @param missed years in which the tank cannot go out
   */
  Reach strongest(List<Part> ofOneSite, Set<Integer> missed) {
    Part first = ofOneSite.get(0);
    if (ofOneSite.size() == 1 && first.missed().equals(missed)) {
      return first.reach();
    }
    List<Integer> options = ofOneSite.stream().map(p -> p.option().index()).toList();
    return strongest.computeIfAbsent(
        new Together(first.day(), options, missed),
        k -> reach.strongest(ofOneSite.stream().map(Part::reach).toList(), missed));
  }

  /** Place of the first day on which a pass may follow one; the number of days for none. */
  int firstAfter(int day) {
    int next = day + 1;
    while (next < days.size()
        && !house.areApart(
            space.grid().date(days.get(day).date()), space.grid().date(days.get(next).date()))) {
      next++;
    }
    return next;
  }

  /** A part as a pass of its own. */
  Stop alone(Part part) {
    return new Stop(days.get(part.day()).date(), List.of(part.option().index()));
  }
}
