package org.swathbook.catalog.file;

import java.io.ByteArrayOutputStream;
import java.lang.reflect.RecordComponent;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;

/**
 * Writes a record and all that it holds for {@link ValueReader}: every different value once, after
 * the values it is made of, which it names by their number in the file. The same value always gives
 * the same bytes.
 */
final class ValueWriter {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  /** The numbers of the values written, by their kind and what they are made of. */
  private final Map<List<Object>, Integer> numbers = new HashMap<>();

  private ValueWriter() {}

  /**
   * The file of a value.
   *
   * @throws IllegalArgumentException when it holds something that is neither a record nor one of
   *     the plain values and collections of {@link ValueKind}
   */
  static byte[] write(Record value) {
    ValueWriter writer = new ValueWriter();
    writer.number(value);
    byte[] body = writer.out.toByteArray();
    writer.out.reset();
    writer.count(writer.numbers.size());
    writer.out.writeBytes(body);
    return writer.out.toByteArray();
  }

  private int number(Object value) {
    if (value instanceof String s) {
      return leaf(ValueKind.TEXT, s, text(s));
    }
    if (value instanceof Double d) {
      return leaf(ValueKind.NUMBER, d, ByteBuffer.allocate(Double.BYTES).putDouble(d).array());
    }
    if (value instanceof LocalDate d) {
      return leaf(ValueKind.DATE, d, text(d.toString()));
    }
    if (value instanceof MonthDay d) {
      return leaf(ValueKind.MONTH_DAY, d, text(d.toString()));
    }
    if (value instanceof Integer i) {
      return node(ValueKind.COUNT, List.of(i), false);
    }
    if (value instanceof Boolean b) {
      return node(b ? ValueKind.YES : ValueKind.NO, List.of(), false);
    }
    if (value instanceof Class<?> c) {
      return node(ValueKind.CLASS, List.of(number(c.getName())), false);
    }
    if (value instanceof Enum<?> e) {
      return node(
          ValueKind.CONSTANT, List.of(number(e.getDeclaringClass()), number(e.name())), false);
    }
    if (value instanceof Record r) {
      return record(r);
    }
    if (value instanceof Optional<?> o) {
      return o.isEmpty()
          ? node(ValueKind.NOTHING, List.of(), false)
          : node(ValueKind.SOMETHING, List.of(number(o.get())), false);
    }
    if (value instanceof OptionalDouble o) {
      return o.isEmpty()
          ? node(ValueKind.NO_NUMBER, List.of(), false)
          : node(ValueKind.SOME_NUMBER, List.of(number(o.getAsDouble())), false);
    }
    if (value instanceof OptionalInt o) {
      return o.isEmpty()
          ? node(ValueKind.NO_COUNT, List.of(), false)
          : node(ValueKind.SOME_COUNT, List.of(o.getAsInt()), false);
    }
    if (value instanceof List<?> l) {
      return node(ValueKind.LIST, numbers(l), true);
    }
    if (value instanceof Set<?> s) {
      return node(ValueKind.SET, numbers(s), true);
    }
    if (value instanceof Map<?, ?> m) {
      List<Integer> parts = new ArrayList<>();
      m.forEach(
          (k, v) -> {
            parts.add(number(k));
            parts.add(number(v));
          });
      return node(m instanceof SortedMap ? ValueKind.SORTED_MAP : ValueKind.MAP, parts, true);
    }
    throw new IllegalArgumentException("no way to write a " + value.getClass().getName());
  }

  private int record(Record r) {
    List<Integer> parts = new ArrayList<>(List.of(number(r.getClass())));
    for (RecordComponent c : r.getClass().getRecordComponents()) {
      try {
        c.getAccessor().setAccessible(true);
        parts.add(number(c.getAccessor().invoke(r)));
      } catch (ReflectiveOperationException e) {
        throw new IllegalArgumentException("the part " + c + " cannot be read", e);
      }
    }
    return node(ValueKind.RECORD, parts, false);
  }

  private List<Integer> numbers(Collection<?> values) {
    return values.stream().map(this::number).toList();
  }

  private int leaf(ValueKind kind, Object value, byte[] bytes) {
    List<Object> key = List.of(kind, value);
    Integer known = numbers.get(key);
    if (known != null) {
      return known;
    }
    out.write(kind.sign());
    out.writeBytes(bytes);
    return add(key);
  }

  /**
   * Written by what it is made of and not by what equals it: sets in another order are equal too.
   */
  private int node(ValueKind kind, List<Integer> parts, boolean counted) {
    List<Object> key = List.of(kind, parts);
    Integer known = numbers.get(key);
    if (known != null) {
      return known;
    }
    out.write(kind.sign());
    if (counted) {
      count(parts.size());
    }
    parts.forEach(this::count);
    return add(key);
  }

  private int add(List<Object> key) {
    int number = numbers.size();
    numbers.put(key, number);
    return number;
  }

  private static byte[] text(String s) {
    byte[] bytes = s.getBytes(StandardCharsets.UTF_8);
    ByteArrayOutputStream text = new ByteArrayOutputStream();
    count(bytes.length, text);
    text.writeBytes(bytes);
    return text.toByteArray();
  }

  private void count(int n) {
    count(n, out);
  }

  /** Seven bits a byte, the lowest first; the eighth says that more follow. */
  private static void count(int n, ByteArrayOutputStream to) {
    int rest = n;
    while ((rest & ~0x7F) != 0) {
      to.write(rest & 0x7F | 0x80);
      rest >>>= 7;
    }
    to.write(rest);
  }
}
