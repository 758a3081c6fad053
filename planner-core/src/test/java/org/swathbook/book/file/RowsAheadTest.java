package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvReader;
import org.swathbook.source.CsvRow;
import org.swathbook.source.Problems;

/** Rows that another thread takes apart come as they would from this one. */
class RowsAheadTest {
  private static RowsAhead.Source table(int rows, Problems problems) {
    StringBuilder text = new StringBuilder("n,word\n");
    for (int i = 0; i < rows; i++) {
      text.append(i).append(",w").append(i % 7).append('\n');
    }
    byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
    return sink ->
        new CsvReader()
            .stream(
                "t.csv",
                new ByteArrayInputStream(bytes),
                CsvColumns.required("n", "word"),
                problems,
                sink);
  }

  private static List<String> told(List<CsvRow> rows) {
    return rows.stream().map(r -> r.line() + ": " + r.text("n") + r.text("word")).toList();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 511, 512, 513, 20_000})
  void allRowsComeInTheirOrder(int rows) throws IOException {
    List<CsvRow> direct = new ArrayList<>();
    List<CsvRow> ahead = new ArrayList<>();
    Problems problems = new Problems();
    table(rows, problems).rows(direct::add);
    assertThat(RowsAhead.read(table(rows, problems), ahead::add)).isPresent();
    assertThat(told(ahead)).isEqualTo(told(direct)).hasSize(rows);
    assertThat(problems.isEmpty()).isTrue();
  }

  @Test
  void whatTheSinkEndsWithComesOut() {
    List<CsvRow> taken = new ArrayList<>();
    Consumer<CsvRow> sink =
        row -> {
          taken.add(row);
          if (taken.size() == 700) {
            throw new IllegalStateException("enough");
          }
        };
    AtomicBoolean reads = new AtomicBoolean();
    RowsAhead.Source source =
        rows -> {
          reads.set(true);
          try {
            return table(50_000, new Problems()).rows(rows);
          } finally {
            reads.set(false);
          }
        };
    assertThatThrownBy(() -> RowsAhead.read(source, sink))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("enough");
    assertThat(taken).hasSize(700);
    assertThat(reads).as("the file, and the problems told of it, are nobody else's now").isFalse();
  }

  @Test
  void whatTheSourceEndsWithComesOutAfterItsRows() {
    List<CsvRow> taken = new ArrayList<>();
    RowsAhead.Source broken =
        sink -> {
          table(600, new Problems()).rows(sink);
          throw new IOException("the disk is gone");
        };
    assertThatThrownBy(() -> RowsAhead.read(broken, taken::add))
        .isInstanceOf(IOException.class)
        .hasMessage("the disk is gone");
    // Whole lots of them; what is not handed over yet is lost with the table.
    assertThat(taken).hasSize(512);
  }
}
