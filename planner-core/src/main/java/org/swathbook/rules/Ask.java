package org.swathbook.rules;

/**
 * Something that matters here and is not known: the rule that needs it, what to look up and where.
 */
public record Ask(RuleId rule, String what, String where, About about) {}
