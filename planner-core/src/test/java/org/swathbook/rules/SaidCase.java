package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Supplier;
import org.swathbook.check.Judgement;
import org.swathbook.testing.MixCase;

/** All that one rule is to say and ask of a tank, a season or a planned pass, to the letter. */
record SaidCase(String rule, String words, Supplier<List<String>> says, List<String> said) {
  static SaidCase says(String rule, String words, MixCase job, String... said) {
    return says(rule, words, () -> job.judged().judgement(), said);
  }

  static SaidCase says(String rule, String words, SeasonCase season, String... said) {
    return says(rule, words, season::judge, said);
  }

  static SaidCase says(String rule, String words, Found found, String... said) {
    return new SaidCase(rule, words, () -> RuleSays.of(rule, found.findings()), List.of(said));
  }

  static SaidCase says(String rule, String words, Supplier<Judgement> judged, String... said) {
    return new SaidCase(rule, words, () -> RuleSays.of(rule, judged.get()), List.of(said));
  }

  /** Findings that are made when they are asked for. */
  @FunctionalInterface
  interface Found {
    Findings findings();
  }

  /** Judged here and not where the case is written, so that a failure is that of one case. */
  void holds() {
    assertThat(says.get()).containsExactlyElementsOf(said);
  }

  @Override
  public String toString() {
    return rule + ": " + words;
  }
}
