package org.swathbook.source;

/**
 * A single value as text.
 *
 * @param text what was written, without quotes; empty for a key with nothing behind it
 * @param quoted whether it stood in quotes
 */
public record ScalarNode(Mark mark, String text, boolean quoted) implements Node {

  /** Whether nothing was written, as after {@code key:}. */
  public boolean isEmpty() {
    return text.isEmpty() && !quoted;
  }

  /** Whether it is this word without quotes. */
  public boolean isWord(String word) {
    return !quoted && text.equals(word);
  }

  @Override
  public String kind() {
    return isEmpty() ? "nothing" : "a single value";
  }
}
