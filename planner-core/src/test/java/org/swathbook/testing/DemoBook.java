package org.swathbook.testing;

import java.nio.file.Path;
import org.swathbook.book.Book;
import org.swathbook.book.file.BookLoader;

/** The demo book, read once for all tests of one process: nothing in it can be changed. */
public final class DemoBook {
  public static final Path FOLDER = Path.of("..", "demo-data");
  public static final Book BOOK = new BookLoader().load(FOLDER);

  private DemoBook() {}
}
