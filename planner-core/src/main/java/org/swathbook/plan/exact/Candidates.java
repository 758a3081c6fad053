package org.swathbook.plan.exact;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Book;
import org.swathbook.plan.choice.DateGrid;
import org.swathbook.plan.draft.Delay;
import org.swathbook.plan.draft.FieldEvaluator;
import org.swathbook.plan.draft.Laid;
import org.swathbook.plan.draft.PassesMade;
import org.swathbook.plan.draft.PlanSpace;
import org.swathbook.plan.draft.Stop;
import org.swathbook.rules.TankOffers;
import org.swathbook.season.ControlBounds;
import org.swathbook.season.ExposureBounds;
import org.swathbook.season.GainBounds;
import org.swathbook.season.Kernel;
import org.swathbook.season.PreparedPass;

/** The tanks on dates of which the exact search makes its programs, by date and then by tank. */
public final class Candidates {
  private static final Comparator<Stop> ORDER =
      Comparator.comparingInt(Stop::date).thenComparing(s -> s.options().toString());

  private final Book book;
  private final FieldEvaluator evaluator;
  private final PlanSpace space;
  private final Kernel kernel;
  private final List<Integer> drivers;
  private final PassesMade made;
  private final List<Laid> laid;
  private final List<Candidate> all;
  private final GainBounds gains;
  private final List<Integer> dates;
  private final int[] placeOfDate;
  private final int[] firstAfter;
  private @Nullable ControlBounds control;
  private @Nullable ExposureBounds exposure;

  public Candidates(Book book, FieldEvaluator evaluator, PlanSpace space, Collection<Stop> stops) {
    this(book, evaluator, space, stops.stream().distinct().sorted(ORDER).toList());
  }

  private Candidates(Book book, FieldEvaluator evaluator, PlanSpace space, List<Stop> inOrder) {
    this.book = book;
    this.evaluator = evaluator;
    this.space = space;
    this.kernel = evaluator.kernel();
    this.drivers = kernel.drivers();
    this.made = evaluator.passesMade();
    this.laid = made.passes().stream().map(p -> Laid.of(kernel, p, drivers)).toList();
    List<Candidate> list = new ArrayList<>();
    for (Stop s : inOrder) {
      PreparedPass pass = evaluator.prepare(s);
      list.add(new Candidate(s, Laid.of(kernel, pass, drivers), cost(s, pass)));
    }
    this.all = List.copyOf(list);
    this.gains = boundGains();
    this.dates = List.copyOf(new TreeSet<>(all.stream().map(Candidate::date).toList()));
    this.placeOfDate = all.stream().mapToInt(c -> dates.indexOf(c.date())).toArray();
    this.firstAfter = firstAfterEach();
  }

  /** Some of the others, in their order. */
  private Candidates(Candidates of, Set<Stop> stops) {
    this.book = of.book;
    this.evaluator = of.evaluator;
    this.space = of.space;
    this.kernel = of.kernel;
    this.drivers = of.drivers;
    this.made = of.made;
    this.laid = of.laid;
    this.all = of.all.stream().filter(c -> stops.contains(c.stop())).toList();
    this.gains = boundGains();
    this.dates = List.copyOf(new TreeSet<>(all.stream().map(Candidate::date).toList()));
    this.placeOfDate = all.stream().mapToInt(c -> dates.indexOf(c.date())).toArray();
    this.firstAfter = firstAfterEach();
  }

  private GainBounds boundGains() {
    return GainBounds.of(kernel, withMade());
  }

  /** Those of the candidates, then those made: these set plants back too, before later ones. */
  List<PreparedPass> withMade() {
    List<PreparedPass> out = new ArrayList<>(all.stream().map(Candidate::pass).toList());
    out.addAll(made.passes());
    return out;
  }

  private double cost(Stop stop, PreparedPass pass) {
    long cents = book.passCost().cents();
    for (int o : stop.options()) {
      cents += space.option(o).cost().cents();
    }
    int years = kernel.traces().years().size();
    return cents / 100.0 * (years - pass.missedYears().size()) / years;
  }

  TankOffers offers() {
    return evaluator.offers();
  }

  Kernel kernel() {
    return kernel;
  }

  /** Places of the driver weeds among the field's weeds. */
  List<Integer> drivers() {
    return drivers;
  }

  /** The same tanks in the same order, each so late. */
  Candidates late(Delay delay) {
    return new Candidates(
        book, evaluator, space, all.stream().map(c -> delay.late(c.stop())).toList());
  }

  /** Those of some stops. */
  Candidates only(Set<Stop> stops) {
    return new Candidates(this, stops);
  }

  /** What stands before every program. */
  PassesMade made() {
    return made;
  }

  /** The beginning of every program: what is made, and nothing of what is still to come. */
  Prefix start() {
    return new Prefix(laid, List.of());
  }

  public int size() {
    return all.size();
  }

  Candidate get(int place) {
    return all.get(place);
  }

  List<Candidate> all() {
    return all;
  }

  GainBounds gains() {
    return gains;
  }

  ControlBounds control() {
    ControlBounds known = control;
    if (known == null) {
      known = ControlBounds.of(kernel, withMade());
      control = known;
    }
    return known;
  }

  ExposureBounds exposure() {
    ExposureBounds known = exposure;
    if (known == null) {
      known = ExposureBounds.of(kernel, withMade(), drivers);
      exposure = known;
    }
    return known;
  }

  int dates() {
    return dates.size();
  }

  /** Place of a candidate's date among the dates. */
  int placeOfDate(int candidate) {
    return placeOfDate[candidate];
  }

  /**
   * First candidate that may come after a date: later by as many days as the house keeps passes
   * apart; the number of candidates when there is none.
   *
   * @param date on the grid; -1 for none, which every candidate may follow
   */
  int firstAfter(int date) {
    return date < 0 ? 0 : firstAfter[date];
  }

  /** By date on the grid. */
  private int[] firstAfterEach() {
    int[] out = new int[space.grid().size()];
    int i = 0;
    for (int date = 0; date < out.length; date++) {
      while (i < all.size() && !mayFollow(date, all.get(i).date())) {
        i++;
      }
      out[date] = i;
    }
    return out;
  }

  private boolean mayFollow(int date, int later) {
    DateGrid grid = space.grid();
    return later > date && book.house().areApart(grid.date(date), grid.date(later));
  }
}
