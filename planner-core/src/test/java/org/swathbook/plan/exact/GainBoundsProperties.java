package org.swathbook.plan.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.statistics.Statistics;
import org.swathbook.book.Book;
import org.swathbook.book.WeedPressure;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Stop;
import org.swathbook.season.GainBounds;
import org.swathbook.season.Kernel;
import org.swathbook.season.Loads;
import org.swathbook.season.PreparedPass;

/** What passes save at most after others: never less than they save in whatever program. */
class GainBoundsProperties {
  private static final double ROUNDING = 1e-6;

  @Property(tries = 60)
  void noFurtherPassesSaveMore(@ForAll long seed) {
    DrawnCandidates.of(seed).ifPresent(GainBoundsProperties::compare);
  }

  /** Counted cohorts stand for others; what holds of the rest may not be said of them. */
  @Property(tries = 60)
  void whereWeedsWereCountedNoneSavesMoreEither(@ForAll long seed) {
    DrawnCandidates.counted(seed).ifPresent(GainBoundsProperties::compare);
  }

  @Property(tries = 3000)
  @Tag("slow")
  void noneOfThousandsSavesMore(@ForAll long seed) {
    DrawnCandidates.of(seed).ifPresent(GainBoundsProperties::compare);
  }

  /**
   * Where weeds stand so thinly that the loss is a straight line, and a pass comes before the crop,
   * nothing is left to be said too much: the bound is what it saves. So each site, biotype and
   * cohort counts.
   */
  @Property(tries = 60)
  void ofThinWeedsAPassBeforePlantingSavesWhatIsSaid(@ForAll long seed) {
    DrawnCandidates.of(seed).ifPresent(GainBoundsProperties::compareThin);
  }

  private static void compareThin(DrawnCandidates drawn) {
    TraceSet dense = drawn.candidates().kernel().traces();
    Book book = drawn.programs().small.book.withScoutings(List.of());
    for (WeedPressure w : dense.weeds()) {
      book =
          book.withWeed(
              new WeedPressure(
                  w.field(),
                  w.weed(),
                  w.perM2() * 1e-9,
                  w.driver(),
                  w.biotypes(),
                  w.listed(),
                  w.note()));
    }
    Kernel kernel = Kernel.of(book, TraceBuilder.build(book, dense.field()));
    Loads none = kernel.loads(List.of());
    double loss = none.score().lossDollarsPerAcre();
    for (Candidate c : drawn.candidates().all()) {
      LocalDate date = c.pass().planned();
      if (loss > 0 && date.isBefore(dense.field().plantDate().minusDays(5))) {
        PreparedPass pass = kernel.prepare(c.pass().mix(), date);
        double saved = loss - kernel.loads(List.of(pass)).score().lossDollarsPerAcre();
        double most = GainBounds.of(kernel, List.of(pass)).mostSaved(0, none);
        assertThat(most / loss).isCloseTo(saved / loss, within(1e-6));
        Statistics.label("share saved, tenths").collect(tenths(saved, loss));
      }
    }
  }

  private static void compare(DrawnCandidates drawn) {
    GainBounds bounds = drawn.candidates().gains();
    drawn.some().map(Draft::stops).forEach(s -> compare(drawn, bounds, s));
  }

  /** After each of the first passes of a program: what all that follow save, and what the next. */
  private static void compare(DrawnCandidates drawn, GainBounds bounds, List<Stop> stops) {
    Candidates candidates = drawn.candidates();
    Kernel kernel = candidates.kernel();
    List<PreparedPass> passes = new ArrayList<>(candidates.start().prepared());
    List<Integer> places = new ArrayList<>();
    List<Loads> after = new ArrayList<>();
    after.add(kernel.loads(passes));
    for (Stop s : stops) {
      int place = drawn.place(s);
      places.add(place);
      passes.add(candidates.get(place).pass());
      after.add(kernel.loads(passes));
    }
    double inTheEnd = after.get(stops.size()).score().lossDollarsPerAcre();
    for (int first = 0; first < stops.size(); first++) {
      double loss = after.get(first).score().lossDollarsPerAcre();
      double most = 0;
      for (int place : places.subList(first, stops.size())) {
        most += bounds.mostSaved(place, after.get(first));
      }
      assertThat(loss - inTheEnd).isLessThanOrEqualTo(most + ROUNDING);
      Statistics.label("saved, tenths of what was said at most")
          .collect(tenths(loss - inTheEnd, most));
      double next = loss - after.get(first + 1).score().lossDollarsPerAcre();
      assertThat(next)
          .isLessThanOrEqualTo(bounds.mostSaved(places.get(first), after.get(first)) + ROUNDING);
    }
  }

  private static String tenths(double part, double whole) {
    return whole > 0 ? Long.toString(Math.round(10 * part / whole)) : "nothing to save";
  }
}
