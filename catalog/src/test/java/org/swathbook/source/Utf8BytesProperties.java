package org.swathbook.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;

/** Bytes are the text, and the fault in it, that the library's decoder makes of them. */
class Utf8BytesProperties {

  @Property(tries = 3000)
  void textsAndFaultsAreThoseOfTheLibrary(@ForAll("bytes") byte[] bytes) {
    assertThat(read(bytes)).isEqualTo(library(bytes));
  }

  /** A table of it ends at the same place, if not at something else that is wrong before. */
  @Property(tries = 1000)
  void aTableEndsInTheSameFault(@ForAll("bytes") byte[] bytes) throws IOException {
    String expected = library(bytes);
    CsvCells cells = new CsvCells("w.csv", new Utf8Bytes("w.csv", new ByteArrayInputStream(bytes)));
    try {
      while (cells.next()) {
        assertThat(cells.count()).isPositive();
      }
      assertThat(cells.isFaulty() || !expected.startsWith("w.csv:")).isTrue();
    } catch (ProblemsException e) {
      assertThat(e.report().get(0)).startsWith(expected);
    }
  }

  /** What stands in cells is read as the library reads it, however cells are written. */
  @Property(tries = 300)
  void datesTimesAndNumbersOfCellsAreThoseOfTheLibrary(
      @ForAll("values") List<Values> values, @ForAll boolean quoted, @ForAll boolean returns) {
    StringBuilder text = new StringBuilder("field,weed,density\n");
    for (Values v : values) {
      String row = v.date() + ",é" + v.time() + "," + v.number().toPlainString();
      text.append(quoted ? '"' + row.replace(",", "\",\"") + "\" " : row.replace("é", ""));
      text.append(returns ? "\r\n" : "\n");
    }
    Problems problems = new Problems();
    CsvTable table = Reading.csv(text.toString(), problems);
    assertThat(problems.report()).isEmpty();
    List<Values> read = new ArrayList<>();
    for (CsvRow row : table.rows()) {
      read.add(
          new Values(
              Texts.date(row.text("field")),
              Texts.time(row.text("weed").replace("é", "")),
              new BigDecimal(row.text("density"))));
      assertThat(Texts.number(row.text("density")))
          .isEqualTo(new BigDecimal(row.text("density")).doubleValue());
    }
    assertThat(read).isEqualTo(values);
  }

  record Values(LocalDate date, LocalTime time, BigDecimal number) {}

  private static String read(byte[] bytes) {
    try {
      return Utf8Bytes.decode("w.csv", bytes);
    } catch (ProblemsException e) {
      String said = e.report().get(0);
      return said.contains("NUL") || said.contains("Windows-1252")
          ? said.substring(0, said.indexOf(' ') + 6)
          : said;
    }
  }

  /** The text, or the place of its fault with the first letters of what is said. */
  private static String library(byte[] bytes) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    CharBuffer chars = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), chars, true);
    String text = chars.flip().toString();
    int nul = text.indexOf('\0');
    if (nul < 0 && !result.isError()) {
      return text;
    }
    String before = nul < 0 ? text : text.substring(0, nul);
    String[] lines = before.split("\r\n|\r|\n", -1);
    String last = lines[lines.length - 1];
    Mark at = new Mark("w.csv", lines.length, last.codePointCount(0, last.length()) + 1);
    return at + (nul < 0 ? ": the f" : ": a NUL").substring(0, 7);
  }

  /** Characters of every length, whole and cut, and bytes that begin none or too long ones. */
  @Provide
  Arbitrary<byte[]> bytes() {
    Arbitrary<byte[]> whole =
        Arbitraries.of("a", "b", ",", "\n", "\r", "\r\n", "\"", "é", "\uFEFF", "\uFFFF", "𝒳", "\0")
            .map(t -> t.getBytes(StandardCharsets.UTF_8));
    Arbitrary<byte[]> any = Arbitraries.bytes().array(byte[].class).ofMinSize(1).ofMaxSize(4);
    Arbitrary<byte[]> upper =
        Arbitraries.bytes()
            .between((byte) 0x80, (byte) 0xFF)
            .array(byte[].class)
            .ofMinSize(1)
            .ofMaxSize(4);
    Arbitrary<byte[]> some =
        Arbitraries.frequencyOf(Tuple.of(40, whole), Tuple.of(1, any), Tuple.of(1, upper));
    // Two letters first, so that no other encoding is told by its first bytes.
    return some.list()
        .ofMaxSize(30)
        .map(
            parts -> {
              ByteArrayOutputStream out = new ByteArrayOutputStream();
              out.writeBytes(new byte[] {'x', 'y'});
              parts.forEach(out::writeBytes);
              return out.toByteArray();
            });
  }

  @Provide
  Arbitrary<List<Values>> values() {
    Arbitrary<LocalDate> dates =
        Arbitraries.integers().between(0, 40_000).map(LocalDate.ofEpochDay(0)::plusDays);
    Arbitrary<LocalTime> times =
        Arbitraries.integers().between(0, 24 * 60 - 1).map(m -> LocalTime.of(m / 60, m % 60));
    Arbitrary<BigDecimal> numbers =
        Arbitraries.bigDecimals()
            .between(BigDecimal.valueOf(-10_000), BigDecimal.valueOf(10_000))
            .ofScale(3);
    return Combinators.combine(dates, times, numbers).as(Values::new).list().ofMaxSize(40);
  }
}
