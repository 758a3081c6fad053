package org.swathbook.rules;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Ordered;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Use;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Dose;
import org.swathbook.program.SprayJob;

/**
 * One active of one dose in a pass.
 *
 * @param pass place of the pass in its program, from 0
 * @param positions where in the season the median day belongs; a day may be two at once
 * @param mixLbPerAcre all of this active in the tank, every product of it added up
 * @param siteLbPerAcre all that the tank holds of the active's site of action, of this active and
 *     of others; of the rest of the tank nothing is known here
 * @param candidates the uses of the active that the crop, the positions and the formulation leave,
 *     in the order of the catalog; none of them refused outright
 * @param chosen the candidate under judgement; empty when there is none
 * @param job what is known of the day of spraying; empty in a plan
 */
public record UseFacts(
    Book book,
    TraceSet traces,
    int pass,
    PassTiming timing,
    Set<Position> positions,
    Dose dose,
    ActiveDose active,
    double mixLbPerAcre,
    double siteLbPerAcre,
    List<Use> candidates,
    Optional<Use> chosen,
    Optional<SprayJob> job) {

  public UseFacts {
    positions = Ordered.set(positions);
    candidates = List.copyOf(candidates);
  }

  public Field field() {
    return traces.field();
  }

  public Ingredient ingredient() {
    return active.ingredient();
  }

  /** The day in the book's season on which the pass is judged: the median over the years. */
  public LocalDate date() {
    return timing.medianDate();
  }

  /** Whether the crop stands. */
  public boolean isInCrop() {
    return positions.stream().anyMatch(p -> p.phase() == Position.Phase.IN_CROP);
  }

  /** The part of the crop's life in words: {@code before emergence}. */
  public String when() {
    return LabelUses.when(positions);
  }

  public UseFacts choosing(Use use) {
    return with(candidates, Optional.of(use));
  }

  /** The same with fewer uses to choose from. */
  public UseFacts among(List<Use> uses) {
    return with(uses, Optional.empty());
  }

  private UseFacts with(List<Use> uses, Optional<Use> use) {
    return new UseFacts(
        book,
        traces,
        pass,
        timing,
        positions,
        dose,
        active,
        mixLbPerAcre,
        siteLbPerAcre,
        uses,
        use,
        job);
  }

  public About about() {
    return About.PROGRAM
        .withPass(pass)
        .withIngredient(active.ingredient().id())
        .withProduct(dose.product().id());
  }

  /** The crop as people call it. */
  public String cropName() {
    return traces.crop().name();
  }
}
