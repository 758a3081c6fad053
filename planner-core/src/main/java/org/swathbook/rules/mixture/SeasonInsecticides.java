package org.swathbook.rules.mixture;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Application;
import org.swathbook.book.InsecticideClass;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.Say;

/**
 * What job and journal say of insecticides on the field up to the day of the job.
 *
 * @param named classes, each with where it is named; without those who say that there were none
 * @param saidThatNone whether somebody wrote down that there were none
 */
record SeasonInsecticides(List<Named> named, boolean saidThatNone) {

  /**
   * @param recorded day of the journal; empty when the job names it
   */
  record Named(String insecticideClass, Optional<LocalDate> recorded) {

    String where() {
      return recorded.map(d -> ", recorded on " + Say.date(d)).orElse("");
    }

    boolean isNone() {
      return insecticideClass.equals(InsecticideClass.NONE);
    }
  }

  /** Nothing in a plan, which has no job. */
  static SeasonInsecticides of(PassFacts facts) {
    if (facts.job().isEmpty()) {
      return new SeasonInsecticides(List.of(), false);
    }
    List<Named> all = new ArrayList<>();
    for (String other : facts.job().get().others()) {
      all.add(new Named(InsecticideClass.of(other), Optional.empty()));
    }
    for (Application row : facts.book().journal().of(facts.field().id())) {
      if (row.season() == facts.book().season() && !row.date().isAfter(facts.job().get().date())) {
        for (String i : row.record().insecticides()) {
          all.add(new Named(InsecticideClass.of(i), Optional.of(row.date())));
        }
      }
    }
    return new SeasonInsecticides(
        all.stream().filter(n -> !n.isNone()).distinct().toList(),
        all.stream().anyMatch(Named::isNone));
  }

  Optional<Named> organophosphate() {
    return named.stream()
        .filter(n -> n.insecticideClass().equals(InsecticideClass.ORGANOPHOSPHATE))
        .findFirst();
  }
}
