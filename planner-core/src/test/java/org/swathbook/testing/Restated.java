package org.swathbook.testing;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Use;

/**
 * A catalog in which one value of one active is another, or is not known. Values are named by the
 * components of the records that lead to them; {@code use} stands for every use.
 */
public final class Restated {
  private static final Source SOURCE = new Source("a label, invented");

  private Restated() {}

  /** Not known; a map becomes an empty one. */
  public static Catalog without(Catalog c, String active, String path) {
    return changed(c, active, path, Stated.unknown(path));
  }

  /** Known that there is none. */
  public static Catalog none(Catalog c, String active, String path) {
    return changed(c, active, path, Stated.none(SOURCE));
  }

  public static Catalog value(Catalog c, String active, String path, Object fresh) {
    return changed(c, active, path, Stated.value(fresh, SOURCE));
  }

  private static Catalog changed(Catalog c, String active, String path, Stated<?> fresh) {
    List<String> parts = Arrays.asList(path.split("\\."));
    List<Ingredient> changed = new ArrayList<>();
    for (Ingredient i : c.ingredients()) {
      changed.add(
          i.id().equals(c.findIngredient(active).orElseThrow().id())
              ? restated(i, parts, fresh)
              : i);
    }
    return new Catalog(
        changed, c.products(), c.weeds(), c.crops(), c.responses(), c.interactions());
  }

  private static Ingredient restated(Ingredient i, List<String> path, Stated<?> fresh) {
    if (path.get(0).equals("rotation")) {
      return (Ingredient) replaced(i, path, fresh);
    }
    boolean ofUse = path.get(0).equals("use");
    List<String> inUse = ofUse ? path.subList(1, path.size()) : path;
    List<Use> uses = new ArrayList<>();
    for (Use u : i.uses()) {
      uses.add((Use) replaced(u, inUse, fresh));
    }
    Ingredient withUses = with(i, "uses", uses);
    return ofUse ? withUses : (Ingredient) replaced(withUses, path, fresh);
  }

  private static Object replaced(Record record, List<String> path, Stated<?> fresh) {
    String name = path.get(0);
    Object old = value(record, name);
    Object now =
        path.size() == 1
            ? (old instanceof Map ? Map.of() : fresh)
            : replaced((Record) old, path.subList(1, path.size()), fresh);
    return with(record, name, now);
  }

  /** A record with one of its parts replaced. */
  public static <R extends Record> R with(R record, String name, Object fresh) {
    RecordComponent[] parts = record.getClass().getRecordComponents();
    Object[] values = new Object[parts.length];
    for (int p = 0; p < parts.length; p++) {
      values[p] = parts[p].getName().equals(name) ? fresh : value(record, parts[p].getName());
    }
    try {
      @SuppressWarnings(
          "unchecked") // getClass() of a record of R is that of R: records have no heirs.
      Class<R> type = (Class<R>) record.getClass();
      Constructor<R> canonical =
          type.getDeclaredConstructor(
              Arrays.stream(parts).map(RecordComponent::getType).toArray(Class[]::new));
      return canonical.newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new LinkageError(e.getMessage(), e);
    }
  }

  private static Object value(Record record, String name) {
    try {
      return record.getClass().getMethod(name).invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new LinkageError(e.getMessage(), e);
    }
  }
}
