package org.swathbook.stress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.ProductId;
import org.swathbook.program.Dose;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.season.outcome.PassOutcome;

/**
 * Each product of the program in turn cannot be had: it is left out of every pass that is still to
 * come, and a pass with nothing left is no pass. That is found out on the day of the first of them.
 */
record MissingProduct() implements StressCase {

  @Override
  public String name() {
    return "missing-product";
  }

  @Override
  public Posed pose(Situation plain) {
    String title = "one product missing";
    List<Stressed> out = new ArrayList<>();
    List<ProductId> seen = new ArrayList<>();
    for (PassOutcome p : plain.outcome().passes()) {
      for (Dose d : p.mix().doses()) {
        ProductId id = d.product().id();
        if (!isOver(plain, p) && !seen.contains(id)) {
          seen.add(id);
          out.add(without(plain, id, p.planned()));
        }
      }
    }
    return out.isEmpty()
        ? Posed.not(title, "no pass is still to come")
        : Posed.of(title, out, List.of());
  }

  private static boolean isOver(Situation plain, PassOutcome pass) {
    return pass.planned().isBefore(plain.today());
  }

  private static Stressed without(Situation plain, ProductId id, LocalDate found) {
    List<Pass> passes = new ArrayList<>();
    List<Integer> origins = new ArrayList<>();
    Program old = plain.program();
    for (int i = 0; i < old.passes().size(); i++) {
      Pass pass = old.passes().get(i);
      PassOutcome walked = plain.outcome().passes().get(plain.places().indexOf(i));
      Pass left = isOver(plain, walked) ? pass : new Pass(pass.at(), pass.mix().without(id));
      if (!left.mix().doses().isEmpty()) {
        passes.add(left);
        origins.add(i);
      }
    }
    return new Stressed(
        id.value(),
        plain.book(),
        plain.traces(),
        old.with(passes),
        origins,
        found,
        List.of(id),
        plain.book().resprayExtra(),
        Optional.empty(),
        Optional.empty());
  }
}
