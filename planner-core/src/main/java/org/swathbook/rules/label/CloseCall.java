package org.swathbook.rules.label;

/**
 * A limit that what is met keeps by so little that a wrong figure would turn the verdict.
 *
 * @param what the limit in words, {@code the days before planting}
 * @param met the value met
 * @param source whose limit it is
 */
record CloseCall(String what, String met, String limit, String source) {}
