package org.swathbook.book.file;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
import org.swathbook.measure.Unit;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapReader;
import org.swathbook.source.Mark;
import org.swathbook.source.Nearest;
import org.swathbook.source.Node;
import org.swathbook.source.Problems;
import org.swathbook.source.ScalarNode;
import org.swathbook.source.Texts;
import org.swathbook.source.YamlReader;

/**
 * How somebody else's table of sprayings is read: which of its columns is which of the journal's,
 * in which unit, how it writes a date, and what its words mean here.
 *
 * @param columns the journal's column and unit by theirs
 * @param ignored their columns that are knowingly left out
 * @param always cells that are the same in every row, by the journal's column
 * @param words our word by theirs, by the journal's column
 */
record JournalMap(
    Map<String, Target> columns,
    Set<String> ignored,
    DateForm dates,
    Map<String, String> always,
    Map<String, Map<String, String>> words) {

  static final String FORMAT = "swathbook.journal-map/1";
  private static final String EXAMPLE = "columns: {Field Name: field, Area: {to: acres, unit: ha}}";

  /** What went out in all; the journal keeps the rate that it makes with the acres. */
  static final String TOTAL = "total";

  /** Columns that an import may fill; lines are counted anew, and corrections are no imports. */
  static final List<String> OURS =
      Stream.concat(
              ApplicationsReader.COLUMNS.stream()
                  .filter(c -> !c.equals("line") && !c.equals("corrects")),
              Stream.of(TOTAL))
          .toList();

  private static final Map<String, Unit> UNITS =
      Map.of("acres", Unit.ACRE, "windMph", Unit.MILE_PER_HOUR, "tempF", Unit.FAHRENHEIT);

  /**
   * @param unit of their numbers; empty for the journal's own, and for a rate that of its column
   */
  record Target(String column, Optional<String> unit) {

    /** Their number in the journal's unit. */
    String number(String text) {
      Unit ours = UNITS.get(column);
      if (ours == null || unit.isEmpty()) {
        return text;
      }
      String with = Texts.number(text) + " " + unit.get();
      double value = Quantity.parse(with, ours.dimension(), "12.5").in(ours);
      return PassCells.number(JournalImport.significant(value));
    }
  }

  /** A table that has the journal's own columns. */
  static JournalMap own(List<String> header) {
    Map<String, Target> columns = new LinkedHashMap<>();
    header.stream()
        .filter(OURS::contains)
        .forEach(c -> columns.put(c, new Target(c, Optional.empty())));
    return new JournalMap(columns, Set.of("line"), DateForm.ISO, Map.of(), Map.of());
  }

  /** The map in a file. */
  static JournalMap read(String name, byte[] content) {
    Problems problems = new Problems();
    MapReader top = new MapReader(new YamlReader().readMap(name, content), problems);
    top.require("format", Texts.oneOf(List.of(FORMAT)), FORMAT, FORMAT);
    Map<String, Target> columns = new LinkedHashMap<>();
    entries(top.require("columns", EXAMPLE), EXAMPLE, problems)
        .forEach(e -> target(e, problems).ifPresent(t -> put(columns, e, t, problems)));
    Set<String> ignored = new LinkedHashSet<>(top.findAll("ignore", Texts::text, "Invoice"));
    DateForm dates = top.find("dates", DateForm::of, "M/D/YYYY").orElse(DateForm.ISO);
    Map<String, String> always = texts(top.find("always"), "always: {crop: corn}", problems);
    always.keySet().forEach(c -> known(top.mark("always"), c, problems));
    Map<String, Map<String, String>> words = new LinkedHashMap<>();
    for (MapNode.Entry e :
        entries(top.find("words"), "words: {field: {North 80: ND-1}}", problems)) {
      known(e.keyMark(), e.key(), problems);
      words.put(e.key(), texts(Optional.of(e.value()), "field: {North 80: ND-1}", problems));
    }
    top.done();
    problems.throwIfAny();
    return new JournalMap(columns, ignored, dates, always, words);
  }

  private static void put(
      Map<String, Target> columns, MapNode.Entry e, Target target, Problems problems) {
    if (columns.values().stream().anyMatch(t -> t.column().equals(target.column()))) {
      problems.add(
          e.keyMark(), "'" + target.column() + "' is filled twice", "name one column for it");
    }
    columns.put(e.key(), target);
  }

  private static Optional<Target> target(MapNode.Entry e, Problems problems) {
    if (e.value() instanceof ScalarNode s) {
      return known(s.mark(), s.text(), problems)
          ? Optional.of(new Target(s.text(), Optional.empty()))
          : Optional.empty();
    }
    Optional<MapReader> map = MapReader.of(e.value(), "{to: acres, unit: ha}", problems);
    if (map.isEmpty()) {
      return Optional.empty();
    }
    String to = map.get().require("to", Texts::text, "acres", "");
    Optional<String> unit = map.get().find("unit", Texts::text, "ha");
    map.get().done();
    if (to.isEmpty() || !known(map.get().mark("to"), to, problems)) {
      return Optional.empty();
    }
    Target target = new Target(to, unit);
    if (unit.isPresent()) {
      checkUnit(map.get().mark("unit"), target, problems);
    }
    return Optional.of(target);
  }

  private static void checkUnit(Mark mark, Target target, Problems problems) {
    try {
      if (target.column().equals("rate")) {
        Rate.parse("1 " + target.unit().orElseThrow());
      } else if (target.column().equals(TOTAL)) {
        Rate.parse("1 " + target.unit().orElseThrow() + "/acre");
      } else if (UNITS.containsKey(target.column())) {
        target.number("1");
      } else {
        problems.add(
            mark,
            "'" + target.column() + "' is no number with a unit",
            "leave the unit out; units are of rate, total, " + String.join(", ", UNITS.keySet()));
      }
    } catch (MeasureException ex) {
      problems.add(
          mark,
          ex,
          switch (target.column()) {
            case "rate" -> "fl oz/acre";
            case TOTAL -> "gal";
            default -> exampleUnit(target.column());
          });
    }
  }

  private static String exampleUnit(String column) {
    Dimension d = UNITS.getOrDefault(column, Unit.ACRE).dimension();
    return d == Dimension.SPEED ? "m/s" : d == Dimension.TEMPERATURE ? "C" : "ha";
  }

  private static boolean known(Mark mark, String column, Problems problems) {
    if (OURS.contains(column)) {
      return true;
    }
    problems.add(
        mark,
        "'" + column + "' is no column of the journal that an import may fill",
        Nearest.hint(column, OURS));
    return false;
  }

  private static List<MapNode.Entry> entries(
      Optional<Node> node, String example, Problems problems) {
    if (node.isEmpty()) {
      return List.of();
    }
    if (node.get() instanceof MapNode map) {
      return map.entries();
    }
    problems.add(node.get().mark(), "here stands " + node.get().kind(), "write '" + example + "'");
    return List.of();
  }

  private static Map<String, String> texts(Optional<Node> node, String example, Problems problems) {
    Map<String, String> out = new LinkedHashMap<>();
    for (MapNode.Entry e : entries(node, example, problems)) {
      MapReader.scalar(e.value(), Texts::text, example, problems)
          .ifPresent(t -> out.put(e.key(), t));
    }
    return out;
  }

  /** Our word for theirs, case counting for nothing; their own where the map names none. */
  String word(String column, String text) {
    return words.getOrDefault(column, Map.of()).entrySet().stream()
        .filter(e -> e.getKey().strip().equalsIgnoreCase(text))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse(text);
  }
}
