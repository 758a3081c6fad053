package org.swathbook.audit;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Makes a book of as many applications as are wanted: the demo book's fields over and over, each
 * copy under ids of its own ({@code ND-7x1} is the eighth copy of {@code ND-1}). For measuring:
 * every copy has the outdoors of its model, which a real book's fields share less.
 */
final class ManyFieldsBook {
  private static final List<String> TABLES =
      List.of("applications.csv", "fields.csv", "weeds.csv", "seasons.csv");

  private ManyFieldsBook() {}

  /** {@code DEMO BOOK ROWS}: writes the four tables into BOOK, a copy of the demo book. */
  public static void main(String[] args) throws IOException {
    write(Path.of(args[0]), Path.of(args[1]), Integer.parseInt(args[2]));
  }

  /** Returns how many copies of each field the book has. */
  static int write(Path demo, Path book, int applications) throws IOException {
    int each = Files.readAllLines(demo.resolve("applications.csv")).size() - 1;
    int copies = (applications + each - 1) / each;
    for (String table : TABLES) {
      List<String> lines = Files.readAllLines(demo.resolve(table));
      try (BufferedWriter out = Files.newBufferedWriter(book.resolve(table))) {
        out.write(lines.get(0) + "\n");
        for (int i = 0; i < copies; i++) {
          for (String row : lines.subList(1, lines.size())) {
            out.write(copy(row, i) + "\n");
          }
        }
      }
    }
    return copies;
  }

  private static String copy(String row, int i) {
    return row.replaceAll("\\b(ND|QH|OB)-([1-4])\\b", "$1-" + i + "x$2")
        .replaceAll("\\b([AM])-(\\d\\d)-", "$1-$2-" + i + "x");
  }
}
