package org.swathbook.cli.html;

import java.util.List;
import org.swathbook.cli.text.FindingText;

/** A part of a page that is read from top to bottom. */
public sealed interface Block {

  /** A line that says what follows. */
  record Heading(String words) implements Block {}

  /**
   * A paragraph.
   *
   * @param css a class of the style sheet; empty for plain
   */
  record Line(String css, String words) implements Block {}

  /** A table with names of its columns, as many as each row has cells. */
  record Grid(List<String> names, List<List<String>> rows) implements Block {
    public Grid {
      names = List.copyOf(names);
      rows = rows.stream().map(List::copyOf).toList();
    }
  }

  /** Findings of rules. */
  record Findings(FindingText.Shown shown) implements Block {}

  /**
   * A picture.
   *
   * @param caption how to read it
   */
  record Picture(Drawing wide, Drawing narrow, String caption) implements Block {}
}
