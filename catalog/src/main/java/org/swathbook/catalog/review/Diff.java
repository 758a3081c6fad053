package org.swathbook.catalog.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Interaction;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.file.WrittenCatalog;
import org.swathbook.catalog.file.WrittenEntry;
import org.swathbook.catalog.file.WrittenGroup;
import org.swathbook.catalog.file.WrittenValue;
import org.swathbook.measure.Inches;

/** What changed from one catalog to another, value by value. */
public final class Diff {
  private final List<Change> changes = new ArrayList<>();

  private Diff() {}

  /**
   * Entries in the order of their kind and id, then ratings, then what partners do to each other.
   */
  public static List<Change> changes(WrittenCatalog before, WrittenCatalog after) {
    Diff diff = new Diff();
    Function<WrittenEntry, String> key = e -> e.kind().plural() + "/" + e.id();
    Map<String, WrittenEntry> old = by(before.entries(), key);
    Map<String, WrittenEntry> now = by(after.entries(), key);
    Set<String> keys = new TreeSet<>(old.keySet());
    keys.addAll(now.keySet());
    keys.forEach(k -> diff.entry(Optional.ofNullable(old.get(k)), Optional.ofNullable(now.get(k))));
    diff.responses(before.catalog(), after.catalog());
    diff.interactions(before.catalog(), after.catalog());
    return List.copyOf(diff.changes);
  }

  private static <T> Map<String, T> by(List<T> items, Function<T, String> key) {
    Map<String, T> out = new TreeMap<>();
    items.forEach(i -> out.put(key.apply(i), i));
    return out;
  }

  private void entry(Optional<WrittenEntry> before, Optional<WrittenEntry> after) {
    WrittenEntry any = after.or(() -> before).orElseThrow();
    String kind = any.kind().word();
    if (before.isEmpty() || after.isEmpty()) {
      changes.add(whole(kind, any.id(), "", before.isPresent()));
      return;
    }
    Map<String, WrittenGroup> old = groups(before.get());
    Map<String, WrittenGroup> now = groups(after.get());
    Set<String> names = new LinkedHashSet<>(old.keySet());
    names.addAll(now.keySet());
    for (String name : names) {
      WrittenGroup was = old.get(name);
      WrittenGroup is = now.get(name);
      if (was == null || is == null) {
        changes.add(whole(kind, any.id(), name, was != null));
      } else {
        values(kind, any.id(), name, was, is);
      }
    }
    text(
        kind,
        any.id(),
        "",
        "last review",
        before.get().text("reviewed"),
        after.get().text("reviewed"));
  }

  private static Change whole(String kind, String entry, String part, boolean gone) {
    Optional<String> there = Optional.of("there");
    return new Change(
        kind, entry, part, "", gone ? there : Optional.empty(), gone ? Optional.empty() : there);
  }

  /**
   * Uses by their crop and positions; of several alike each by the trait it asks, then in order.
   */
  private static Map<String, WrittenGroup> groups(WrittenEntry entry) {
    Map<String, WrittenGroup> out = new LinkedHashMap<>();
    for (WrittenGroup g : entry.groups()) {
      String name = g.name() + trait(g);
      for (int n = 2; out.containsKey(name); n++) {
        name = g.name() + trait(g) + " (" + n + ")";
      }
      out.put(name, g);
    }
    return out;
  }

  private static String trait(WrittenGroup g) {
    return g.values().stream()
        .filter(v -> v.key().equals("trait") && !v.text().equals("none"))
        .map(v -> ", with " + v.text())
        .findFirst()
        .orElse("");
  }

  private void values(String kind, String id, String part, WrittenGroup was, WrittenGroup is) {
    Map<String, WrittenValue> old = by(was.values(), WrittenValue::key);
    Map<String, WrittenValue> now = by(is.values(), WrittenValue::key);
    Set<String> keys = new LinkedHashSet<>(old.keySet());
    keys.addAll(now.keySet());
    for (String key : keys) {
      String before = Optional.ofNullable(old.get(key)).map(WrittenValue::text).orElse("");
      String after = Optional.ofNullable(now.get(key)).map(WrittenValue::text).orElse("");
      text(kind, id, part, KeyWords.of(key), before, after);
      if (before.equals(after)) {
        String source = "source of the " + KeyWords.of(key);
        text(kind, id, part, source, source(old, key), source(now, key));
      }
    }
  }

  private static String source(Map<String, WrittenValue> values, String key) {
    return Optional.ofNullable(values.get(key)).map(v -> v.source().text()).orElse("");
  }

  private void text(String kind, String id, String part, String what, String before, String after) {
    if (!before.equals(after)) {
      changes.add(new Change(kind, id, part, what, stated(before), stated(after)));
    }
  }

  private static Optional<String> stated(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }

  private void responses(Catalog before, Catalog after) {
    Function<Response, String> key =
        r -> r.ingredient() + "|" + r.weed() + "|" + r.timing().name().toLowerCase(Locale.ROOT);
    Map<String, Response> old = by(List.copyOf(before.responses()), key);
    Map<String, Response> now = by(List.copyOf(after.responses()), key);
    Set<String> keys = new TreeSet<>(old.keySet());
    keys.addAll(now.keySet());
    for (String k : keys) {
      String[] names = k.split("\\|", -1);
      String was = Optional.ofNullable(old.get(k)).map(Diff::figures).orElse("");
      String is = Optional.ofNullable(now.get(k)).map(Diff::figures).orElse("");
      text("rating", names[0], "", "control of " + names[1] + ", " + names[2], was, is);
    }
  }

  private static String figures(Response r) {
    return String.format(
        Locale.ROOT,
        "%.0f (%.0f-%.0f) %%%s, %s confidence – %s",
        r.emaxPct(),
        r.lowPct(),
        r.highPct(),
        r.controlHeightCm().isPresent()
            ? String.format(
                Locale.ROOT, ", rated at %.1f in", Inches.ofCm(r.controlHeightCm().getAsDouble()))
            : "",
        r.confidence(),
        r.source());
  }

  private void interactions(Catalog before, Catalog after) {
    for (Interaction i : before.interactions()) {
      if (!after.interactions().contains(i)) {
        changes.add(
            new Change(
                "interaction",
                InteractionWords.of(i),
                "",
                "effect",
                stated(InteractionWords.effect(i)),
                stated("")));
      }
    }
    for (Interaction i : after.interactions()) {
      if (!before.interactions().contains(i)) {
        changes.add(
            new Change(
                "interaction",
                InteractionWords.of(i),
                "",
                "effect",
                stated(""),
                stated(InteractionWords.effect(i))));
      }
    }
  }
}
