package org.swathbook.catalog.file;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.swathbook.catalog.Ordered;

/**
 * Makes again what {@link ValueWriter} wrote. Records are made by their own constructors, which
 * check their parts as ever. There is no text to parse and no unit to convert, which is what makes
 * it quick from cold.
 */
final class ValueReader {
  private final ValueKind[] kinds = ValueKind.bySign();

  private final byte[] bytes;
  private int at;
  private Object[] made = {};

  private ValueReader(byte[] bytes) {
    this.bytes = bytes;
  }

  /** How records of a class are made. */
  private record Maker(Constructor<?> constructor, int parts) {}

  /**
   * The value of a file.
   *
   * @throws IllegalStateException when the classes of the program have other parts than when the
   *     file was written
   */
  static <T extends Record> T read(byte[] bytes, Class<T> type) {
    return type.cast(new ValueReader(bytes).last());
  }

  private Object last() {
    made = new Object[count()];
    Object value = made;
    try {
      for (int i = 0; i < made.length; i++) {
        value = value(kinds[bytes[at++]]);
        made[i] = value;
      }
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("the classes have changed since the catalog was written", e);
    }
    return value;
  }

  private Object value(ValueKind kind) throws ReflectiveOperationException {
    return switch (kind) {
      case TEXT -> text();
      case NUMBER -> Double.longBitsToDouble(bits());
      case COUNT -> count();
      case YES -> true;
      case NO -> false;
      case DATE -> LocalDate.parse(text());
      case MONTH_DAY -> MonthDay.parse(text());
      case NOTHING -> Optional.empty();
      case SOMETHING -> Optional.of(part());
      case NO_NUMBER -> OptionalDouble.empty();
      case SOME_NUMBER -> OptionalDouble.of((Double) part());
      case NO_COUNT -> OptionalInt.empty();
      case SOME_COUNT -> OptionalInt.of(count());
      case LIST -> List.of(parts(count()));
      case SET -> Ordered.set(List.of(parts(count())));
      case MAP -> Ordered.map(entries(new LinkedHashMap<>()));
      case SORTED_MAP -> {
        TreeMap<Object, Object> sorted = new TreeMap<>();
        entries(sorted);
        yield Collections.unmodifiableSortedMap(sorted);
      }
      case CLASS -> type((String) part());
      case CONSTANT -> constant((Class<?>) part(), (String) part());
      case RECORD -> {
        Maker maker = (Maker) part();
        yield maker.constructor().newInstance(parts(maker.parts()));
      }
    };
  }

  /** The class of an enum, or how a record is made. */
  private static Object type(String name) throws ReflectiveOperationException {
    Class<?> type = Class.forName(name);
    if (!type.isRecord()) {
      return type;
    }
    Class<?>[] parts =
        Stream.of(type.getRecordComponents())
            .map(RecordComponent::getType)
            .toArray(Class<?>[]::new);
    Constructor<?> constructor = type.getDeclaredConstructor(parts);
    constructor.setAccessible(true);
    return new Maker(constructor, parts.length);
  }

  private static Object constant(Class<?> type, String name) throws NoSuchFieldException {
    for (Object constant : type.getEnumConstants()) {
      if (((Enum<?>) constant).name().equals(name)) {
        return constant;
      }
    }
    throw new NoSuchFieldException(type.getName() + "." + name);
  }

  private Map<Object, Object> entries(Map<Object, Object> into) {
    int entries = count() / 2;
    for (int i = 0; i < entries; i++) {
      Object key = part();
      into.put(key, part());
    }
    return into;
  }

  private Object[] parts(int count) {
    Object[] parts = new Object[count];
    for (int i = 0; i < count; i++) {
      parts[i] = part();
    }
    return parts;
  }

  private Object part() {
    return made[count()];
  }

  private String text() {
    int length = count();
    String text = new String(bytes, at, length, StandardCharsets.UTF_8);
    at += length;
    return text;
  }

  private long bits() {
    long bits = 0;
    for (int i = 0; i < Long.BYTES; i++) {
      bits = bits << 8 | bytes[at++] & 0xFF;
    }
    return bits;
  }

  private int count() {
    int n = 0;
    for (int shift = 0; ; shift += 7) {
      int b = bytes[at++];
      n |= (b & 0x7F) << shift;
      if (b >= 0) {
        return n;
      }
    }
  }
}
