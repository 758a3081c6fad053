package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.IngredientId;
import org.swathbook.check.Judgement;
import org.swathbook.cli.text.FindingText;
import org.swathbook.rules.About;
import org.swathbook.rules.Ask;
import org.swathbook.rules.Finding;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Verdict;
import org.swathbook.rules.label.LabelConditionRule;
import org.swathbook.rules.label.NotVerifiedRule;

/** A long list of questions is cut, but not what a label says in words. */
class AskedOfLabelsTest {
  private static final String CONDITION = "the label of dicamba also says (met here?): only here";

  @Test
  void aConditionOfALabelIsNeverCutOff() {
    List<Ask> asks =
        Stream.concat(
                IntStream.range(0, 12)
                    .mapToObj(
                        i ->
                            new Ask(
                                new RuleId("soil-limit"),
                                "thing " + i,
                                "place " + i,
                                About.PROGRAM)),
                Stream.of(
                    new Ask(
                        LabelConditionRule.CARD.id(),
                        CONDITION,
                        "label",
                        About.PROGRAM.withIngredient(new IngredientId("dicamba")))))
            .toList();
    Optional<Finding> all = NotVerifiedRule.sumUp(asks);
    String said =
        new FindingText(Samples.book().catalog())
                .shown(
                    new Judgement(
                        Verdict.UNVERIFIED, all.stream().toList(), asks, List.of(), List.of()),
                    f -> true)
                .findings()
                .stream()
                .flatMap(f -> f.lines().stream())
                .map(FindingText.Paragraph::words)
                .collect(Collectors.joining("\n"));

    assertThat(said)
        .contains("13 things to look up", "thing 7", "and 4 more", "- dicamba: " + CONDITION)
        .doesNotContain("thing 8");
  }
}
