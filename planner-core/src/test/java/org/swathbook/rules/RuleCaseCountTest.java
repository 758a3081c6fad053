package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** How many cases each rule has, of those that trip it and of those that leave it silent. */
class RuleCaseCountTest {

  /** What a rule is to say of a case: its gravest severity in words, or none. */
  private record Said(String rule, boolean trips) {}

  private static List<Said> all() {
    List<Said> out = new ArrayList<>();
    RuleCasesTest.all().forEach(c -> out.add(new Said(c.rule(), c.trips())));
    BoundaryCasesTest.cases().forEach(c -> out.add(new Said(c.rule(), trips(c.says()))));
    LoadingPadBoundaryTest.cases().forEach(c -> out.add(new Said(c.rule(), trips(c.says()))));
    LabelBoundaryTest.cases().forEach(c -> out.add(new Said(c.rule(), trips(c.says()))));
    SeasonBoundaryTest.cases().forEach(c -> out.add(new Said(c.rule(), trips(c.says()))));
    return out;
  }

  private static boolean trips(String says) {
    return !says.equals("none");
  }

  @Test
  void everyRuleHasCasesOnBothSides() {
    Map<String, int[]> counts = new TreeMap<>();
    RuleBook.all().forEach(r -> counts.put(r.id().value(), new int[2]));
    for (Said s : all()) {
      counts.computeIfAbsent(s.rule(), r -> new int[2])[s.trips() ? 0 : 1]++;
    }
    StringBuilder table = new StringBuilder();
    counts.forEach(
        (rule, n) ->
            table.append(
                String.format(Locale.ROOT, "%-22s %3d trip, %3d silent%n", rule, n[0], n[1])));
    table.append(all().size()).append(" cases");
    assertThat(counts).as(table.toString()).allSatisfy((r, n) -> assertThat(n).doesNotContain(0));
    assertThat(all()).as(table.toString()).hasSizeGreaterThan(400);
  }
}
