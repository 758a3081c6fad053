package org.swathbook.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** What is read ahead is the text, whole and in its order, with what it ends with. */
@Timeout(60)
class TextAheadTest {
  private static final String TEXT = "a row, of some cells\n".repeat(200_000);

  /** A text that ends in a fault. */
  private static final class Faulty extends Reader {
    private final Reader text;
    private final IOException fault;

    Faulty(String text, IOException fault) {
      this.text = new StringReader(text);
      this.fault = fault;
    }

    @Override
    public int read(char[] to, int from, int length) throws IOException {
      int n = text.read(to, from, Math.min(length, 1000));
      if (n < 0) {
        throw fault;
      }
      return n;
    }

    @Override
    public void close() {}
  }

  @Test
  void theTextIsWhole() throws IOException {
    for (String text : new String[] {"", "x", TEXT}) {
      StringWriter out = new StringWriter();
      try (Reader ahead = TextAhead.of(new StringReader(text))) {
        ahead.transferTo(out);
        assertThat(ahead.read()).isEqualTo(-1);
      }
      assertThat(out.toString()).isEqualTo(text);
    }
  }

  @Test
  void aFaultComesBehindAllThatWasRead() throws IOException {
    IOException fault = new IOException("gone");
    StringWriter out = new StringWriter();
    try (Reader ahead = TextAhead.of(new Faulty(TEXT, fault))) {
      assertThatThrownBy(() -> ahead.transferTo(out)).isSameAs(fault);
      assertThatThrownBy(ahead::read).isSameAs(fault);
    }
    assertThat(out.toString()).isEqualTo(TEXT);
  }

  /** Whoever leaves early waits for nothing, and nothing is read any more behind him. */
  @Test
  void leavingEarlyClosesTheText() throws IOException {
    AtomicBoolean closed = new AtomicBoolean();
    Reader endless =
        new Reader() {
          @Override
          public int read(char[] to, int from, int length) {
            assertThat(closed).isFalse();
            return length;
          }

          @Override
          public void close() {
            closed.set(true);
          }
        };
    try (Reader ahead = TextAhead.of(endless)) {
      assertThat(ahead.read()).isEqualTo(0);
    }
    assertThat(closed).isTrue();
  }
}
