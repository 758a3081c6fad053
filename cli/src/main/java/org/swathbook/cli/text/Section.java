package org.swathbook.cli.text;

import java.util.List;

/**
 * A part of a sheet in words, whatever it is printed on.
 *
 * @param items in their order
 */
public record Section(List<Item> items) {

  /** One thing of a section. */
  public sealed interface Item {}

  /** A line that says what follows. */
  public record Heading(String words) implements Item {}

  /**
   * A paragraph.
   *
   * @param level how deep it stands below its heading, from 0
   */
  public record Line(int level, String words) implements Item {}

  /**
   * A table.
   *
   * @param sides one letter a column, {@code l} or {@code r}
   * @param times how often each row is to be done, one after the other; 0 where there is nothing to
   *     do
   */
  public record Rows(int level, String sides, int times, List<List<String>> rows) implements Item {
    public Rows {
      rows = rows.stream().map(List::copyOf).toList();
    }
  }

  public Section {
    items = List.copyOf(items);
  }

  /** A blank line ends it. */
  void on(Page page) {
    for (Item item : items) {
      if (item instanceof Heading h) {
        page.line(h.words());
      } else if (item instanceof Line l) {
        page.wrapped(2 * l.level(), 2 * l.level() + 2, l.words());
      } else if (item instanceof Rows r) {
        Table table = new Table(2 * r.level(), r.sides());
        r.rows().forEach(table::row);
        table.on(page);
      }
    }
    page.blank();
  }
}
