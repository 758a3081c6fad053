package org.swathbook.rules.timing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.WeedHeights;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Dose;
import org.swathbook.rules.LabelUses;
import org.swathbook.rules.PassPositions;
import org.swathbook.rules.ProgramFacts;
import org.swathbook.rules.Rated;
import org.swathbook.season.outcome.PassOutcome;

/** The tallest plants of a weed that the labels of a pass let it be sprayed at. */
final class LabelHeights {
  private LabelHeights() {}

  /** The active whose label goes furthest, with what it says. */
  record Tallest(Ingredient active, double cm) {}

  /**
   * Over the partners that are counted on for the weed: rated as effective through leaves and not
   * resisted. Empty where one of them has no limit or none that is known, and where there is none.
   */
  static Optional<Tallest> tallest(ProgramFacts facts, PassOutcome pass, WeedPressure weed) {
    Set<Position> positions = PassPositions.of(facts.traces(), pass.timing());
    Optional<Tallest> out = Optional.empty();
    for (Dose dose : pass.mix().doses()) {
      for (ActiveDose a : dose.actives()) {
        if (!isCountedOn(facts, positions, weed, a.ingredient())) {
          continue;
        }
        OptionalDouble cm = limitCm(facts, positions, weed, dose, a.ingredient());
        if (cm.isEmpty()) {
          return Optional.empty();
        }
        if (out.isEmpty() || cm.getAsDouble() > out.get().cm()) {
          out = Optional.of(new Tallest(a.ingredient(), cm.getAsDouble()));
        }
      }
    }
    return out;
  }

  private static boolean isCountedOn(
      ProgramFacts facts, Set<Position> positions, WeedPressure weed, Ingredient active) {
    boolean inCrop = LabelUses.phase(positions) == Position.Phase.IN_CROP;
    Response.Timing timing = inCrop ? Response.Timing.POST : Response.Timing.BURNDOWN;
    return active.hasFoliarActivity()
        && !Rated.isResisted(weed, active)
        && facts.book().catalog().response(weed.weed().id(), active.id(), timing).find().stream()
            .anyMatch(r -> r.emaxPct() >= 100 * facts.book().house().effectiveSite());
  }

  /** The most that any use allows which the crop, the position and the traits leave. */
  private static OptionalDouble limitCm(
      ProgramFacts facts,
      Set<Position> positions,
      WeedPressure weed,
      Dose dose,
      Ingredient active) {
    List<Use> uses =
        LabelUses.fitting(active, facts.field(), positions, dose.product().formulation()).stream()
            .filter(u -> LabelUses.hasTraits(u, facts.field()))
            .toList();
    double most = 0;
    for (Use use : uses) {
      if (!(use.weedHeights() instanceof Stated.Value<WeedHeights> v)) {
        return OptionalDouble.empty();
      }
      OptionalDouble limit = Rated.tallestCm(v.value(), weed);
      if (limit.isEmpty()) {
        return OptionalDouble.empty();
      }
      most = Math.max(most, limit.getAsDouble());
    }
    return most > 0 ? OptionalDouble.of(most) : OptionalDouble.empty();
  }
}
