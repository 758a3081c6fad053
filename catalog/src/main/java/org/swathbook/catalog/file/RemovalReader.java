package org.swathbook.catalog.file;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Unit;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapReader;
import org.swathbook.source.ScalarNode;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/**
 * Reads the stages by which weeds must be gone: {@code {bare: V3, afterResidual: V6}}, or by row
 * spacing with the stages to add after a residual, {@code {15 in: V2, 30 in: V1, afterResidual: +2
 * stages}}.
 */
final class RemovalReader {
  private static final String EXAMPLE = "{bare: V3, afterResidual: V6}";
  private static final Pattern LATER = Pattern.compile("\\+(\\d) stages?");

  /** Stages later are one digit. */
  static final int MOST_LATER = 9;

  /** Row spacing (cm) under which a stage is kept that holds at any. */
  static final double ANY_ROW = 0;

  private final Entry entry;
  private final TextParser<String> stage;
  private final List<String> stages;
  private final List<String> leaves;

  RemovalReader(Entry entry, TextParser<String> stage, List<String> stages, List<String> leaves) {
    this.entry = entry;
    this.stage = stage;
    this.stages = stages;
    this.leaves = leaves;
  }

  Removal read() {
    TreeMap<Double, String> bare = new TreeMap<>();
    TreeMap<Double, String> after = new TreeMap<>();
    Optional<MapReader> found = entry.map().findMap("criticalRemoval", EXAMPLE);
    if (found.isEmpty()) {
      return new Removal(bare, after);
    }
    MapReader m = found.get();
    m.find("bare", stage, "V3").ifPresent(s -> bare.put(ANY_ROW, s));
    for (MapNode.Entry e : m.node().entries()) {
      if (Character.isDigit(e.key().isEmpty() ? ' ' : e.key().charAt(0))) {
        Optional<Double> row =
            MapReader.scalar(
                new ScalarNode(e.keyMark(), e.key(), false),
                Texts.in(Unit.CENTIMETRE, "30 in"),
                "30 in",
                entry.problems());
        Optional<String> at = m.find(e.key(), stage, "V1");
        if (row.isPresent() && at.isPresent()) {
          bare.put(row.get(), at.get());
        }
      }
    }
    if (bare.isEmpty() || bare.size() > 1 && bare.containsKey(ANY_ROW)) {
      entry
          .problems()
          .add(
              m.mark(),
              "no stage without a residual is given, or two ways at once",
              "write '" + EXAMPLE + "' or a stage for each row spacing");
    }
    m.require("afterResidual", "V6");
    bare.forEach(
        (row, at) ->
            m.find("afterResidual", text -> later(text, at), "V6")
                .ifPresent(s -> after.put(row, s)));
    m.done();
    return new Removal(bare, after);
  }

  private String later(String text, String bare) {
    Matcher later = LATER.matcher(text.strip());
    if (!later.matches()) {
      String named = stage.parse(text);
      if (stages.contains(bare) && stages.indexOf(named) < stages.indexOf(bare)) {
        throw new MeasureException(
            "'"
                + text
                + "' comes before "
                + bare
                + "; a residual does not make weeds cost sooner:"
                + " name that stage or a later one");
      }
      return named;
    }
    int at = leaves.indexOf(bare) + Integer.parseInt(later.group(1));
    if (!leaves.contains(bare) || at >= leaves.size()) {
      throw new MeasureException(
          "'" + text + "' from " + bare + " leaves the leaf stages; name a stage");
    }
    return leaves.get(at);
  }
}
