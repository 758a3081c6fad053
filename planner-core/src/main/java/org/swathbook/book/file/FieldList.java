package org.swathbook.book.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.swathbook.book.Field;
import org.swathbook.measure.MeasureException;
import org.swathbook.program.FieldId;

/**
 * The ids of {@code fields.csv}, those of rows with problems among them: a mistake in a field's row
 * shall not make its rows in other tables look wrong.
 */
final class FieldList {
  private final Map<String, FieldId> ids = new LinkedHashMap<>();
  private final Map<FieldId, Field> fields = new LinkedHashMap<>();
  private boolean anyId;

  /** Takes every id for known from here on, for a table of fields that cannot be read. */
  void trustAnyId() {
    anyId = true;
  }

  /** Empty when the id stands there already. */
  Optional<FieldId> add(String text) {
    FieldId id = new FieldId(text);
    return ids.putIfAbsent(key(text), id) == null ? Optional.of(id) : Optional.empty();
  }

  void put(Field field) {
    fields.put(field.id(), field);
  }

  List<Field> fields() {
    return List.copyOf(fields.values());
  }

  /** The field unless its row has a problem. */
  Optional<Field> find(FieldId id) {
    return Optional.ofNullable(fields.get(id));
  }

  /** The id as the table of fields writes it. */
  FieldId parse(String text) {
    FieldId id = ids.get(key(text));
    if (id == null && anyId) {
      return new FieldId(text);
    }
    if (id == null) {
      TreeSet<String> known = new TreeSet<>();
      ids.values().forEach(i -> known.add(i.value()));
      throw known.isEmpty()
          ? new MeasureException("'" + text + "' is no field; write its row in fields.csv first")
          : Names.unknown(text, "field of fields.csv", known);
    }
    return id;
  }

  private static String key(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }
}
