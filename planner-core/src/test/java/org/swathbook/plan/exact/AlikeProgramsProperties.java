package org.swathbook.plan.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.statistics.Statistics;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.measure.Money;
import org.swathbook.plan.DrawnPrograms;
import org.swathbook.plan.draft.Delay;
import org.swathbook.plan.draft.Walked;

/**
 * Of programs that come to the same cent the first by the order of the aim is found, though another
 * of them is known: amounts are compared before they are rounded, and a program that seems less by
 * a part of a cent may not be passed over.
 */
class AlikeProgramsProperties {
  private static final Set<String> ALL = Set.copyOf(HouseRuleCheck.NAMES);

  /** Least cost, whatever house rule is broken: one tank on several days costs the same. */
  private static final Aim LEAST_COST = new Aim(ALL, Aim.Worth.COST, false);

  @Property(tries = 60)
  void theFirstOfThemIsFound(@ForAll long seed) {
    DrawnCandidates.of(seed).ifPresent(AlikeProgramsProperties::compare);
  }

  @Property(tries = 2000)
  @Tag("slow")
  void thousandsOfTimesTheFirstOfThemIsFound(@ForAll long seed) {
    DrawnCandidates.of(seed).ifPresent(AlikeProgramsProperties::compare);
  }

  private static void compare(DrawnCandidates drawn) {
    DrawnPrograms programs = drawn.programs();
    Delay delay = new Delay(programs.small.space(), programs.evaluator);
    List<Walked> walked = programs.walked();
    for (Aim aim : List.of(LEAST_COST, Aim.HOUSE_RULES_ASIDE, Aim.LEAST_BAD)) {
      List<Walked> fit = walked.stream().filter(aim::allows).sorted(aim.order(delay)).toList();
      List<Walked> alike =
          fit.stream().filter(w -> isAlike(aim, w, fit.get(0)) && w.hasPasses()).toList();
      if (alike.size() > 1) {
        ExactSearch.Result found =
            new ExactSearch(
                    aim,
                    drawn.candidates(),
                    programs.small.book.house(),
                    programs.small.space().maxPasses(),
                    programs.evaluator,
                    delay,
                    EnumSet.allOf(Pruning.class),
                    Long.MAX_VALUE)
                .run(Optional.of(alike.get(alike.size() - 1)));
        assertThat(found.best().map(Walked::draft)).contains(fit.get(0).draft());
      }
      Statistics.label(aim.worth() + " alike").collect(alike.size() > 1);
    }
  }

  private static boolean isAlike(Aim aim, Walked one, Walked other) {
    return worth(aim, one).equals(worth(aim, other))
        && (!aim.lightestFirst()
            || one.brokenRules() == other.brokenRules()
                && (int) one.deficit() == (int) other.deficit());
  }

  private static Money worth(Aim aim, Walked w) {
    return aim.worth() == Aim.Worth.COST ? w.cost() : w.net();
  }
}
