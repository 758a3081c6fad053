package org.swathbook.rules;

import java.util.List;

/**
 * What a rule says of itself.
 *
 * @param severity the gravest finding it makes
 * @param question what it asks, one sentence
 * @param trigger when it objects, in plain words with numbers
 * @param sources where the rule comes from: a publication, or 'common practice, no source'
 * @param trips an example that it objects to
 * @param silent an example that it lets pass
 */
public record RuleCard(
    RuleId id,
    Severity severity,
    String question,
    String trigger,
    List<String> sources,
    String trips,
    String silent) {

  public RuleCard {
    sources = List.copyOf(sources);
    if (question.isBlank()
        || trigger.isBlank()
        || trips.isBlank()
        || silent.isBlank()
        || sources.isEmpty()) {
      throw new IllegalArgumentException("the card of " + id + " has a blank");
    }
  }
}
