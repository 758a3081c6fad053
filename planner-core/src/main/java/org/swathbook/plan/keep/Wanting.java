package org.swathbook.plan.keep;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.swathbook.book.Book;
import org.swathbook.catalog.IngredientId;
import org.swathbook.measure.Money;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.program.Anchor;
import org.swathbook.program.Dose;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;

/** What a program lacks of what is asked of it; passes that are made are past asking. */
public final class Wanting {
  private final Book book;
  private final PlanWishes wishes;
  private final int mostPasses;

  public Wanting(Book book, PlanWishes wishes) {
    this.book = book;
    this.wishes = wishes;
    this.mostPasses =
        Math.min(book.house().maxPasses(), wishes.maxPasses().orElse(Integer.MAX_VALUE));
  }

  /** One sentence each; empty when it meets all. */
  public List<String> of(Program program) {
    List<String> out = new ArrayList<>();
    Set<IngredientId> used = new TreeSet<>();
    for (Pass p : program.passes()) {
      p.mix().actives().forEach(a -> used.add(a.ingredient().id()));
      if (!(p.at() instanceof Anchor.Made)) {
        for (Dose d : p.mix().doses()) {
          if (!wishes.allows(d)) {
            out.add(d.product().name() + " is in a pass and is to be left out.");
          }
        }
      }
    }
    for (IngredientId i : wishes.include()) {
      if (!used.contains(i)) {
        out.add("No pass brings " + book.catalog().ingredient(i).name() + ".");
      }
    }
    int passes = program.passes().size();
    for (int i = mostPasses; i < passes; i++) {
      out.add("It has " + passes + " passes and may have " + mostPasses + ".");
    }
    wishes
        .budgetPerAcre()
        .filter(b -> cost(program).compareTo(b) > 0)
        .ifPresent(
            b ->
                out.add(
                    "It costs $"
                        + cost(program)
                        + " an acre when every pass is made, and may cost $"
                        + b
                        + "."));
    return out;
  }

  /** By how much it is above the budget, dollars an acre; 0 where it is not, or none is asked. */
  double overBudget(Program program) {
    return wishes
        .budgetPerAcre()
        .map(b -> Math.max(0, cost(program).minus(b).dollars()))
        .orElse(0.0);
  }

  /** Every pass made; what has no price counts as nothing. */
  private Money cost(Program program) {
    Money out = Money.ZERO;
    for (Pass p : program.passes()) {
      out = out.plus(book.passCost()).plus(book.prices().perAcre(p.mix()).orElse(Money.ZERO));
    }
    return out;
  }
}
