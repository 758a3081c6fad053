package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.swathbook.rules.SeasonCases.soybean;
import static org.swathbook.rules.SeasonCases.weed;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import org.swathbook.book.DriverKind;
import org.swathbook.growth.CohortSet;
import org.swathbook.growth.SeasonTrace;

/**
 * How much is still to come when nothing in the soil waits for it: the shares of the rule book (20
 * % after planting, 10 % behind a pass over the crop; default, ours) against the plants of the
 * trace, counted here.
 */
class NoResidualSharesTest {
  private static final LocalDate POST = LocalDate.parse("2027-06-08");

  private static Optional<Finding> noResidual(SeasonCase s) {
    return s.judge().findings().stream()
        .filter(f -> f.rule().value().equals("no-residual"))
        .findFirst();
  }

  /** Share of the plants that come up on days of which something holds. */
  private static double share(CaseBook book, IntPredicate day) {
    CohortSet plants = book.traces().years().get(0).cohorts(0);
    double some = 0;
    double all = 0;
    for (int c = 0; c < plants.count(); c++) {
      all += plants.perM2(c);
      some += day.test(plants.emergedOn(c)) ? plants.perM2(c) : 0;
    }
    return some / all;
  }

  /** The more rain kochia has in April, the less of it is left for May. */
  @Test
  void aLayerIsMissedWhereMoreThanAFifthComesAfterPlanting() {
    List<Double> shares = new ArrayList<>();
    for (int hundredths = 2; hundredths <= 20; hundredths++) {
      CaseBook book =
          soybean(weed("KCHSC", 60, DriverKind.YES, 0))
              .rain("2027-04-20", hundredths / 100.0)
              .rain("2027-05-15", 1)
              .rain("2027-06-15", 1);
      SeasonTrace trace = book.traces().years().get(0);
      double toCome = share(book, up -> up > trace.plantingDay());
      shares.add(toCome);
      Optional<Finding> found = noResidual(SeasonCase.of(book));
      assertThat(found.isPresent()).as("%s to come", toCome).isEqualTo(toCome > 0.2);
      found.ifPresent(
          f -> assertThat(f.message()).startsWith(Say.share(toCome) + " of kochia comes up after"));
    }
    assertThat(shares).anyMatch(s -> s > 0.2 && s < 0.3).anyMatch(s -> s < 0.2 && s > 0.1);
  }

  /** Day by day longer, a layer from planting on leaves less to the time behind the post. */
  @Test
  void aLayerBelongsIntoAPostWhereMoreThanATenthComesBehindIt() {
    List<Double> shares = new ArrayList<>();
    for (int last = 270; last < 330; last += 2) {
      int lastDay = last;
      CaseBook book =
          soybean(weed("AMAPA", 80, DriverKind.YES, 0))
              .rain("2027-05-15", 1)
              .rain("2027-06-12", 0.15)
              .rain("2027-06-19", 0.15)
              .rain("2027-06-26", 0.15);
      SeasonTrace trace = book.traces().years().get(0);
      int sprayed = book.on(POST).years().get(0).day();
      double behind =
          share(
              book, up -> up > sprayed && up < trace.canopyDay() && !(252 <= up && up <= lastDay));
      shares.add(behind);
      SeasonCase s = SeasonCase.of(book);
      Optional<Finding> found =
          noResidual(
              s.pass("2027-05-11", book.mix("S-metolachlor", "1.0 lb ai/acre"), s.toCome("AMAPA"))
                  .layer("AMAPA", 252, lastDay)
                  .pass(
                      POST.toString(),
                      book.mix("glyphosate", "1.13 lb ae/acre"),
                      s.standing("AMAPA", 5, 3, s.site("glyphosate", "AMAPA", 95))));
      assertThat(found.isPresent()).as("%s behind it", behind).isEqualTo(behind > 0.1);
      found.ifPresent(
          f ->
              assertThat(f.message())
                  .startsWith(Say.share(behind) + " of Palmer amaranth comes up after this pass"));
    }
    assertThat(shares).anyMatch(s -> s > 0.1 && s < 0.25).anyMatch(s -> s < 0.1 && s > 0);
  }
}
