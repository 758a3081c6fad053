package org.swathbook.cli.text;

/** Text that grows line by line, none wider than {@link #WIDTH} columns, LF at line ends. */
final class Page {
  static final int WIDTH = 100;

  private final StringBuilder text = new StringBuilder();

  /** One line as it is; one that is too wide is wrapped. */
  Page line(String line) {
    int indent = line.length() - line.stripLeading().length();
    return line.length() <= WIDTH ? put(line) : wrapped(indent, indent + 2, line);
  }

  Page blank() {
    text.append('\n');
    return this;
  }

  /** All lines of another one. */
  Page add(Page other) {
    text.append(other.text);
    return this;
  }

  Page rule(char c) {
    return put(String.valueOf(c).repeat(WIDTH));
  }

  /** A paragraph: its first line at one indent, the rest at another. */
  Page wrapped(int first, int rest, String paragraph) {
    int indent = first;
    for (String line : Wrap.lines(paragraph, WIDTH - first, WIDTH - rest)) {
      put(" ".repeat(indent) + line);
      indent = rest;
    }
    return this;
  }

  Page wrapped(int indent, String paragraph) {
    return wrapped(indent, indent, paragraph);
  }

  /** Left text, and right text at the right edge where both fit on a line, else on the next. */
  Page apart(String left, String right) {
    int gap = WIDTH - left.length() - right.length();
    if (gap >= 2) {
      return put(left + " ".repeat(gap) + right);
    }
    line(left);
    return put(" ".repeat(Math.max(0, WIDTH - right.length())) + right);
  }

  private Page put(String line) {
    text.append(line.stripTrailing()).append('\n');
    return this;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
