package org.swathbook.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.swathbook.book.Book;
import org.swathbook.book.WeedPressure;
import org.swathbook.season.GainBounds;
import org.swathbook.season.Kernel;
import org.swathbook.season.PassLayers;
import org.swathbook.season.PreparedPass;

/** The tanks on dates of which the exact search makes its programs, by date and then by tank. */
final class Candidates {
  private static final Comparator<Stop> ORDER =
      Comparator.comparingInt(Stop::date).thenComparing(s -> s.options().toString());

  private final Kernel kernel;
  private final List<Integer> drivers;
  private final List<Candidate> all;
  private final GainBounds gains;
  private final List<Integer> dates;
  private final int[] placeOfDate;

  Candidates(Book book, Kernel kernel, PlanSpace space, Collection<Stop> stops) {
    this.kernel = kernel;
    this.drivers = drivers(kernel);
    List<Candidate> made = new ArrayList<>();
    for (Stop s : stops.stream().distinct().sorted(ORDER).toList()) {
      PreparedPass pass = kernel.prepare(space.mix(s), space.grid().date(s.date()));
      made.add(new Candidate(s, pass, cost(book, space, s, pass), layers(pass)));
    }
    this.all = List.copyOf(made);
    this.gains = GainBounds.of(kernel, all.stream().map(Candidate::pass).toList());
    this.dates = List.copyOf(new TreeSet<>(all.stream().map(Candidate::date).toList()));
    this.placeOfDate = all.stream().mapToInt(c -> dates.indexOf(c.date())).toArray();
  }

  private static List<Integer> drivers(Kernel kernel) {
    List<Integer> out = new ArrayList<>();
    List<WeedPressure> weeds = kernel.traces().weeds();
    for (int w = 0; w < weeds.size(); w++) {
      if (weeds.get(w).driver().isDriver()) {
        out.add(w);
      }
    }
    return List.copyOf(out);
  }

  private double cost(Book book, PlanSpace space, Stop stop, PreparedPass pass) {
    long cents = book.passCost().cents();
    for (int o : stop.options()) {
      cents += space.option(o).cost().cents();
    }
    int years = kernel.traces().years().size();
    return cents / 100.0 * (years - pass.missedYears().size()) / years;
  }

  private List<PassLayers> layers(PreparedPass pass) {
    return drivers.stream().map(w -> PassLayers.of(kernel, pass, w)).toList();
  }

  Kernel kernel() {
    return kernel;
  }

  /** Places of the driver weeds among the field's weeds. */
  List<Integer> drivers() {
    return drivers;
  }

  int size() {
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

  int dates() {
    return dates.size();
  }

  /** Place of a candidate's date among the dates. */
  int placeOfDate(int candidate) {
    return placeOfDate[candidate];
  }

  /** First candidate whose date is later; the number of candidates when there is none. */
  int firstAfter(int date) {
    int i = 0;
    while (i < all.size() && all.get(i).date() <= date) {
      i++;
    }
    return i;
  }
}
