package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Laws of a verdict over findings of any severities. */
class VerdictProperties {

  private static List<Finding> findings(List<Severity> severities) {
    List<Finding> out = new ArrayList<>();
    for (Severity s : severities) {
      out.add(
          new Finding(
              new RuleId("case"), s, "Case.", "", "", Say.COMMON_PRACTICE, "", About.PROGRAM));
    }
    return out;
  }

  @Property
  void theGravestFindingDecides(@ForAll List<Severity> severities) {
    Verdict expected =
        severities.contains(Severity.BLOCK)
            ? Verdict.BLOCKED
            : severities.contains(Severity.WARN)
                ? Verdict.CAUTION
                : severities.contains(Severity.ASK) ? Verdict.UNVERIFIED : Verdict.CLEAR;

    assertThat(Verdict.of(findings(severities))).isEqualTo(expected);
  }

  @Property
  void anotherFindingNeverMakesItMilder(
      @ForAll List<Severity> severities, @ForAll Severity another) {
    List<Severity> more = new ArrayList<>(severities);
    more.add(another);

    assertThat(Verdict.of(findings(more))).isGreaterThanOrEqualTo(Verdict.of(findings(severities)));
  }

  @Property
  void theOrderOfFindingsCountsForNothing(@ForAll List<Severity> severities, @ForAll long seed) {
    List<Severity> shuffled = new ArrayList<>(severities);
    Collections.shuffle(shuffled, new Random(seed));

    assertThat(Verdict.of(findings(shuffled))).isEqualTo(Verdict.of(findings(severities)));
  }

  @Property
  void aClearVerdictHoldsNothingUnknown(@ForAll List<Severity> severities) {
    if (Verdict.of(findings(severities)) == Verdict.CLEAR) {
      assertThat(severities).allMatch(s -> s == Severity.NOTE);
    }
  }
}
