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
  record Line(String css, Marked words) implements Block {
    Line(String css, String words) {
      this(css, Marked.plain(words));
    }
  }

  /** A table with names of its columns, as many as each row has cells. */
  record Grid(List<String> names, List<List<Marked>> rows) implements Block {
    public Grid {
      names = List.copyOf(names);
      rows = rows.stream().map(List::copyOf).toList();
    }

    /** A table in which nothing is marked. */
    static Grid plain(List<String> names, List<List<String>> rows) {
      return new Grid(names, Marked.rows(rows));
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
