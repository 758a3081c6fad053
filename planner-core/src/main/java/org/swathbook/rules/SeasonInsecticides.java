package org.swathbook.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.book.Application;
import org.swathbook.book.InsecticideClass;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.TankTerms.InsecticideLimit;
import org.swathbook.ledger.Positions;

/**
 * What job and journal say of insecticides on the field up to the day of the job.
 *
 * @param named classes, each with where it is named; without those who say that there were none
 * @param saidThatNone whether somebody wrote down that there were none
 */
public record SeasonInsecticides(List<Named> named, boolean saidThatNone) {

  /**
   * @param recorded day of the journal; empty when the job names it
   * @param onLeaves whether its row says that the crop was up
   */
  public record Named(String insecticideClass, Optional<LocalDate> recorded, boolean onLeaves) {

    /** {@code , recorded on 8 May 2027 over the crop}; nothing where the job names it. */
    public String where() {
      return recorded
          .map(d -> ", recorded on " + Say.date(d) + (onLeaves ? " over the crop" : ""))
          .orElse("");
    }

    /** First day after the wait; empty where none is stated, or where it may lie in the soil. */
    public Optional<LocalDate> over(InsecticideLimit limit) {
      return onLeaves && limit.foliarWaitDays().isPresent()
          ? recorded.map(d -> d.plusDays(limit.foliarWaitDays().getAsInt()))
          : Optional.empty();
    }

    private boolean isNone() {
      return insecticideClass.equals(InsecticideClass.NONE);
    }
  }

  /** Nothing in a plan, which has no job. */
  public static SeasonInsecticides of(PassFacts facts) {
    if (facts.job().isEmpty()) {
      return new SeasonInsecticides(List.of(), false);
    }
    List<Named> all = new ArrayList<>();
    for (String other : facts.job().get().others()) {
      all.add(new Named(InsecticideClass.of(other), Optional.empty(), false));
    }
    for (Application row : facts.book().journal().of(facts.field().id())) {
      if (row.season() == facts.book().season() && !row.date().isAfter(facts.job().get().date())) {
        for (String i : row.record().insecticides()) {
          all.add(
              new Named(InsecticideClass.of(i), Optional.of(row.date()), isOverCrop(facts, row)));
        }
      }
    }
    return new SeasonInsecticides(
        all.stream().filter(n -> !n.isNone()).distinct().toList(),
        all.stream().anyMatch(Named::isNone));
  }

  /** A row that does not say the stage of the crop may be one in the furrow. */
  private static boolean isOverCrop(PassFacts facts, Application row) {
    Set<Position> at = Positions.find(facts.book().catalog(), row.crop(), row.position());
    return !at.isEmpty() && at.stream().allMatch(p -> p.phase() == Position.Phase.IN_CROP);
  }

  /** The first of the organophosphates. */
  public Optional<Named> organophosphate() {
    return named.stream()
        .filter(n -> n.insecticideClass().equals(InsecticideClass.ORGANOPHOSPHATE))
        .findFirst();
  }
}
