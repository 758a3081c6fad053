package org.swathbook.plan.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.statistics.Statistics;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Use;
import org.swathbook.check.PairJudge;
import org.swathbook.check.UseJudge;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.Timings;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.choice.DateGrid;
import org.swathbook.plan.choice.OptionMaker;
import org.swathbook.program.Mix;
import org.swathbook.rules.About;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.Findings;
import org.swathbook.rules.UseFacts;
import org.swathbook.rules.label.RateBelowUseRule;
import org.swathbook.tank.TankNeeds;

/**
 * The planner asks the use rules once for each dose and date and the pair rules once for each two
 * doses; here the same rules judge whole tanks, any doses of any field of the demo book beside each
 * other, and both must say the same.
 */
class MasksProperties {
  private static final Book DEMO = DemoCopy.inMemory();
  private static final Map<String, Masks> KEPT = new ConcurrentHashMap<>();

  /** A field with its masks, all dates and doses of it. */
  private record Masks(TraceSet traces, PlanSpace space) {}

  @Property(tries = 500)
  void masksSayOfATankWhatTheRulesSay(@ForAll long seed) {
    compare(new Random(seed));
  }

  @Property(tries = 30_000)
  @Tag("slow")
  void ofManyTanksToo(@ForAll long seed) {
    compare(new Random(seed));
  }

  private static void compare(Random random) {
    Field field = DEMO.fields().get(random.nextInt(DEMO.fields().size()));
    Masks masks = KEPT.computeIfAbsent(field.id().toString(), id -> make(field));
    PlanSpace space = masks.space();
    int date = random.nextInt(space.grid().size());
    List<Integer> tank = tank(space, date, random);
    PassTiming timing = Timings.at(masks.traces(), space.grid().date(date));
    Mix mix = space.mix(new Stop(date, tank));

    boolean masked = !space.legal(date, tank);
    Verdict rules = judge(masks.traces(), timing, mix);

    if (rules.isShortOfALeastRate() && !rules.isBlocked()) {
      // To the rules a reason to warn; the planner does not plan what no label asks for.
      Statistics.label("tanks").collect("a rate falls short");
      return;
    }
    assertThat(masked)
        .as(field.id() + " " + timing.planned() + " " + mix)
        .isEqualTo(rules.isBlocked() || rules.leavesANeedUnmet());
    Statistics.label("tanks")
        .collect(
            !masked
                ? "let pass"
                : tank.stream().allMatch(o -> space.legal(date, List.of(o)))
                    ? "two may not stand beside each other"
                    : "a dose may not be sprayed");
  }

  private static Masks make(Field field) {
    TraceSet traces = TraceBuilder.build(DEMO, field);
    DateGrid grid = new DateGrid(field, DEMO.house().dateStepDays());
    Legality legality = new Legality(DEMO, traces, grid);
    return new Masks(
        traces,
        new PlanSpace(
            field,
            DEMO.house(),
            grid,
            OptionMaker.make(DEMO, field).options(),
            legality::allows,
            legality::allows));
  }

  /** Up to four doses of different actives, now all of them legal alone and now whatever comes. */
  private static List<Integer> tank(PlanSpace space, int date, Random random) {
    List<Integer> legal = space.legalOn(date);
    boolean each = random.nextInt(4) > 0 && !legal.isEmpty();
    List<Integer> out = new ArrayList<>();
    int wanted = 1 + random.nextInt(4);
    for (int draw = 0; draw < 10 && out.size() < wanted; draw++) {
      int option =
          each ? legal.get(random.nextInt(legal.size())) : random.nextInt(space.options().size());
      if (out.stream().noneMatch(o -> space.sameActive(o, option))) {
        out.add(option);
      }
    }
    return out;
  }

  /**
   * @param leavesANeedUnmet whether of some two doses one refuses what the other asks for: to the
   *     rules a reason to warn, and nothing that is planned
   */
  private record Verdict(
      boolean isBlocked, boolean isShortOfALeastRate, boolean leavesANeedUnmet) {}

  private static Verdict judge(TraceSet traces, PassTiming timing, Mix mix) {
    boolean blocked = false;
    boolean low = false;
    List<ActiveUse> actives = new ArrayList<>();
    for (UseFacts facts : UseJudge.facts(DEMO, traces, 0, timing, mix)) {
      Optional<Use> use = UseJudge.choose(facts);
      Findings found = UseJudge.judge(facts);
      blocked |= found.isBlocked();
      low |= found.sorted().stream().anyMatch(f -> f.rule().equals(RateBelowUseRule.CARD.id()));
      actives.add(new ActiveUse(facts.dose(), facts.active(), use));
    }
    Findings pairs = Findings.all();
    PairJudge.judge(actives, About.PROGRAM, pairs);
    boolean unmet = false;
    for (ActiveUse a : actives) {
      for (ActiveUse b : actives) {
        unmet |= !TankNeeds.of(List.of(a.partner(), b.partner())).unmet().isEmpty();
      }
    }
    return new Verdict(blocked || pairs.isBlocked(), low, unmet);
  }
}
