package org.swathbook.catalog.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Ordered;

/** What is written is read again to the last bit, and what cannot be is refused. */
class ValueWriterTest {
  private record Sizes(int least, int most, double none, boolean yes, boolean no) {}

  private record Texts(String name, LocalDate date, MonthDay day, ValueKind kind) {}

  private record Perhaps(
      Optional<String> no,
      Optional<String> yes,
      OptionalDouble noNumber,
      OptionalDouble number,
      OptionalInt noCount,
      OptionalInt count) {}

  private record Sets(Set<String> one, Set<String> other, Map<String, Integer> places) {}

  private record Sorted(SortedMap<Double, String> byNumber) {}

  private record Odd(Object thing) {}

  @Test
  void numbersKeepEveryBit() {
    Sizes sizes = new Sizes(Integer.MIN_VALUE, Integer.MAX_VALUE, -0.0, true, false);
    assertThat(again(sizes, Sizes.class)).isEqualTo(sizes);
  }

  @Test
  void textsDatesAndConstants() {
    Texts texts =
        new Texts("lb/acre \u2013 \ud83c\udf3d", LocalDate.MIN, MonthDay.of(2, 29), ValueKind.MAP);
    assertThat(again(texts, Texts.class)).isEqualTo(texts);
  }

  @Test
  void whatIsThereAndWhatIsNot() {
    Perhaps perhaps =
        new Perhaps(
            Optional.empty(),
            Optional.of(""),
            OptionalDouble.empty(),
            OptionalDouble.of(Double.NaN),
            OptionalInt.empty(),
            OptionalInt.of(300));
    assertThat(again(perhaps, Perhaps.class)).isEqualTo(perhaps);
  }

  /** Two sets that are equal and in another order stay two. */
  @Test
  void ordersAreKept() {
    Sets sets =
        new Sets(
            Ordered.set(List.of("b", "a")),
            Ordered.set(List.of("a", "b")),
            Ordered.map(new TreeMap<>(Map.of("z", 1, "y", 2)).descendingMap()));
    Sets read = again(sets, Sets.class);
    assertThat(new ArrayList<>(read.one())).containsExactly("b", "a");
    assertThat(new ArrayList<>(read.other())).containsExactly("a", "b");
    assertThat(new ArrayList<>(read.places().keySet())).containsExactly("z", "y");
    Sorted sorted = new Sorted(new TreeMap<>(Map.of(10.0, "ten", 9.0, "nine")));
    assertThat(again(sorted, Sorted.class).byNumber().firstKey()).isEqualTo(9.0);
  }

  @Test
  void whatNobodyCouldReadIsRefused() {
    assertThatThrownBy(() -> ValueWriter.write(new Odd(Thread.currentThread())))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Thread");
  }

  /** A file of another build of the program is no quiet half of a catalog. */
  @Test
  void classesThatHaveChangedAreNoticed() {
    byte[] bytes = ValueWriter.write(new Odd("x"));
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    byte[] changed = text.replace("$Odd", "$Ode").getBytes(StandardCharsets.ISO_8859_1);
    assertThatThrownBy(() -> ValueReader.read(changed, Odd.class))
        .isInstanceOf(IllegalStateException.class);
  }

  private static <T extends Record> T again(T value, Class<T> type) {
    byte[] bytes = ValueWriter.write(value);
    T read = ValueReader.read(bytes, type);
    assertThat(ValueWriter.write(read)).isEqualTo(bytes);
    return read;
  }
}
