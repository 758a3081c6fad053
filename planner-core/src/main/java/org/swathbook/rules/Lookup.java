package org.swathbook.rules;

/**
 * What to look up and where: the label's section or the book's column, and what to fill in.
 *
 * @param what the missing thing, {@code soil pH limit of metribuzin in soybean}
 */
public record Lookup(String what, String where) {}
