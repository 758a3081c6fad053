package org.swathbook.source;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Cells and their places are those of Jackson's reader of CSV, which knows nothing of this one. */
class CsvCellsProperties {

  @Provide
  Arbitrary<String> texts() {
    return Arbitraries.of(
            "a",
            "b",
            "bc",
            ",",
            ",",
            ",",
            "\"",
            "\"\"",
            "\",\"",
            "\n",
            "\n",
            "\r\n",
            "\r",
            " ",
            "\t",
            "\u00A0",
            "é",
            "\uD835\uDCB3",
            "\u0001",
            "\uFFFF")
        .list()
        .ofMinSize(0)
        .ofMaxSize(40)
        .map(parts -> String.join("", parts));
  }

  @Property(tries = 3000)
  void cellsAndPlacesAreThoseOfAnotherReader(@ForAll("texts") String text) throws IOException {
    assertThat(read(bytes(text))).isEqualTo(jackson(text));
  }

  /** However few bytes come at a time. */
  @Property(tries = 300)
  void whateverComesAtATime(@ForAll("texts") String text) throws IOException {
    InputStream whole = bytes(text);
    InputStream slow =
        new InputStream() {
          @Override
          public int read() throws IOException {
            return whole.read();
          }

          @Override
          public int read(byte[] to, int from, int length) throws IOException {
            return whole.read(to, from, Math.min(1, length));
          }
        };
    assertThat(read(slow)).isEqualTo(jackson(text));
  }

  /** Cells over the whole of a long text, whose rows end anywhere in what is read at once. */
  @Property(tries = 20)
  void longTexts(@ForAll("texts") String text) throws IOException {
    String closed = text.chars().filter(c -> c == '"').count() == 0 ? text : "\"d\"\"e\r\nf\",x";
    String all = (closed + "\nplain cells,of a row\r\n").repeat(1500);
    assertThat(read(bytes(all))).isEqualTo(jackson(all));
  }

  private static InputStream bytes(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }

  /** A line a row, its cells as {@code line:column text}; blank rows are left out. */
  private static List<String> read(InputStream text) throws IOException {
    List<String> out = new ArrayList<>();
    CsvCells cells = new CsvCells("w.csv", new Utf8Bytes("w.csv", text));
    while (cells.next()) {
      List<String> row = new ArrayList<>();
      boolean blank = true;
      for (int i = 0; i < cells.count(); i++) {
        row.add(cells.mark(i) + " " + cells.text(i));
        blank &= cells.isEmpty(i);
      }
      if (!blank) {
        out.add(row.toString());
      }
    }
    if (cells.isFaulty()) {
      out.add("fault at " + cells.fault());
    }
    return out;
  }

  private static List<String> jackson(String text) throws IOException {
    List<String> out = new ArrayList<>();
    String[] lines = text.split("\r\n|\r|\n", -1);
    CsvFactory factory =
        CsvFactory.builder()
            .enable(CsvParser.Feature.WRAP_AS_ARRAY)
            .enable(CsvParser.Feature.TRIM_SPACES)
            .build();
    try (CsvParser parser = factory.createParser(text)) {
      try {
        parser.nextToken();
        while (parser.nextToken() == JsonToken.START_ARRAY) {
          List<String> row = new ArrayList<>();
          boolean blank = true;
          while (parser.nextToken() == JsonToken.VALUE_STRING) {
            String cell = trimmed(parser.getText());
            row.add(place(lines, parser.currentTokenLocation()) + " " + cell);
            blank &= cell.isEmpty();
          }
          if (!blank) {
            out.add(row.toString());
          }
        }
      } catch (JsonProcessingException e) {
        JsonLocation at = parser.currentTokenLocation();
        out.add(
            "fault at "
                + new Mark("w.csv", Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr())));
      }
    }
    return out;
  }

  /** That reader counts halves of characters. */
  private static Mark place(String[] lines, JsonLocation at) {
    String line = lines[at.getLineNr() - 1];
    String before = line.substring(0, Math.min(line.length(), at.getColumnNr() - 1));
    int halves = before.length() - before.codePointCount(0, before.length());
    return new Mark("w.csv", at.getLineNr(), at.getColumnNr() - halves);
  }

  private static String trimmed(String text) {
    return text.replaceAll("^[\\s\\u00A0\\u001C-\\u001F]+|[\\s\\u00A0\\u001C-\\u001F]+$", "");
  }
}
