package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold of the book of rules itself. */
class RuleBookTest {

  static List<Rule> rules() {
    return RuleBook.all();
  }

  @Test
  void theBookIsInTheOrderOfItsIdsAndNamesEachOnce() {
    List<String> ids = RuleBook.all().stream().map(r -> r.id().value()).toList();

    assertThat(ids).isSorted().doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void aRuleIsFinalNamedForItsIdAndStandsInAFamily(Rule rule) {
    String camel =
        Arrays.stream(rule.id().value().split("-"))
            .map(w -> w.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + w.substring(1))
            .collect(Collectors.joining());

    assertThat(rule.getClass()).isFinal();
    assertThat(rule.getClass().getSimpleName()).isEqualTo(camel + "Rule");
    assertThat(rule.getClass().getPackageName())
        .matches("org\\.swathbook\\.rules\\.(label|timing|mixture|weather|stewardship)");
  }

  @ParameterizedTest
  @MethodSource("rules")
  void aCardIsWhole(Rule rule) {
    RuleCard card = rule.card();

    assertThat(card.id().value()).matches("[a-z]+(-[a-z]+)*");
    assertThat(card.question()).endsWith("?");
    assertThat(card.trigger()).endsWith(".");
    assertThat(card.sources()).isNotEmpty().noneMatch(String::isBlank);
    assertThat(RuleBook.find(card.id().value().replace('-', ' '))).contains(rule);
  }

  /**
   * Examples of a card are parted by semicolons; each has its case, and no case lacks its words.
   */
  @ParameterizedTest
  @MethodSource("rules")
  void everyExampleOfACardHasItsCase(Rule rule) {
    assertThat(examples(rule, true)).isEqualTo(words(rule.card().trips()));
    assertThat(examples(rule, false)).isEqualTo(words(rule.card().silent()));
  }

  private static Set<String> examples(Rule rule, boolean trips) {
    return RuleCasesTest.all().stream()
        .filter(c -> c.rule().equals(rule.id().value()) && c.trips() == trips)
        .map(RuleCase::example)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private static Set<String> words(String examples) {
    return Stream.of(examples.split("; ")).collect(Collectors.toCollection(LinkedHashSet::new));
  }

  @Test
  void everyScopeKnowsItsWord() {
    assertThat(RuleBook.all())
        .extracting(Rule::scope)
        .isSubsetOf("use", "pair", "pass", "day", "sequence", "program");
    assertThat(RuleBook.pages()).hasSameSizeAs(RuleBook.all());
  }
}
