package org.swathbook.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.Slug;
import org.swathbook.source.Mark;
import org.swathbook.source.Problems;
import picocli.CommandLine.Model.CommandSpec;

/**
 * What was written down of a spraying, by the columns of the journal. Texts, since the journal's
 * reader is the one judge of what may stand in a cell.
 */
final class RecordOptions {
  private final Value<String> date;
  private final Value<String> acres;
  private final Value<String> start;
  private final Value<String> end;
  private final Value<String> wind;
  private final Value<String> windFrom;
  private final Value<String> temperature;
  private final Value<String> stage;
  private final Value<String> target;
  private final Value<String> applicator;
  private final Value<String> certificate;
  private final Words epaNumbers;
  private final Value<String> note;

  RecordOptions(CommandSpec command) {
    date =
        Value.option(
            command,
            "--date",
            "DATE",
            String.class,
            "Day on which it was sprayed; the mix file's, or today, when left out. Weather, hour"
                + " and what was seen in a mix file of another day are not taken.");
    acres =
        Value.option(
            command,
            "--acres",
            "N",
            String.class,
            "Acres that were sprayed; the whole field when left out.");
    start = Value.option(command, "--start", "TIME", String.class, "When it began, 10:30.");
    end = Value.option(command, "--end", "TIME", String.class, "When it ended, 11:45.");
    wind = Value.option(command, "--wind", "MPH", String.class, "Wind as measured, 7.");
    windFrom =
        Value.option(command, "--wind-from", "POINT", String.class, "Where it came from, NW.");
    temperature = Value.option(command, "--temp", "F", String.class, "Temperature of the air, 78.");
    stage =
        Value.option(
            command,
            "--stage",
            "STAGE",
            String.class,
            "Stage of the crop, V3, or the position: pre, post, stubble.");
    target =
        Value.option(command, "--target", "WEEDS", String.class, "What it was sprayed against.");
    applicator =
        Value.option(command, "--applicator", "NAME", String.class, "The certified applicator.");
    certificate =
        Value.option(command, "--cert", "NUMBER", String.class, "Number of the certificate.");
    epaNumbers =
        Words.option(
            command,
            "--epa",
            "[PRODUCT=]NUMBER",
            "EPA registration number of a product; its name is needed where there are several. May"
                + " be given more than once.");
    note = Value.option(command, "--note", "TEXT", String.class, "What else there is to say.");
  }

  private static final Map<String, String> NAMES =
      Map.ofEntries(
          Map.entry("id", "--id"),
          Map.entry("corrects", "--corrects"),
          Map.entry("date", "--date"),
          Map.entry("acres", "--acres"),
          Map.entry("startTime", "--start"),
          Map.entry("endTime", "--end"),
          Map.entry("windMph", "--wind"),
          Map.entry("windFrom", "--wind-from"),
          Map.entry("tempF", "--temp"),
          Map.entry("cropStage", "--stage"),
          Map.entry("target", "--target"),
          Map.entry("applicator", "--applicator"),
          Map.entry("certNo", "--cert"),
          Map.entry("epaRegNo", "--epa"),
          Map.entry("note", "--note"));

  /** What was given, by column; registration numbers apart. */
  Map<String, String> cells() {
    Map<String, String> out = new LinkedHashMap<>();
    put(out, "date", date.value());
    put(out, "acres", acres.value());
    put(out, "startTime", start.value());
    put(out, "endTime", end.value());
    put(out, "windMph", wind.value());
    put(out, "windFrom", windFrom.value());
    put(out, "tempF", temperature.value());
    put(out, "cropStage", stage.value());
    put(out, "target", target.value());
    put(out, "applicator", applicator.value());
    put(out, "certNo", certificate.value());
    put(out, "note", note.value());
    return out;
  }

  boolean isEmpty() {
    return cells().isEmpty() && !epaNumbers.isGiven();
  }

  private static void put(Map<String, String> out, String column, @Nullable String text) {
    if (text != null) {
      out.put(column, text.strip());
    }
  }

  /** The option that a cell came from, else where the rest came from. */
  Function<String, Mark> where(String rest) {
    return column -> {
      boolean given =
          cells().containsKey(column)
              || column.equals("epaRegNo")
              || column.equals("id")
              || column.equals("corrects");
      return Mark.startOf(given ? NAMES.getOrDefault(column, rest) : rest);
    };
  }

  /**
   * The lines with their numbers.
   *
   * @param lines of a pass, each with its product
   */
  List<Map<String, String>> numbered(List<Map<String, String>> lines) {
    Problems problems = new Problems();
    List<Map<String, String>> out = new ArrayList<>();
    lines.forEach(l -> out.add(new LinkedHashMap<>(l)));
    for (String text : epaNumbers.all()) {
      int equals = text.indexOf('=');
      String product = equals < 0 ? "" : Slug.of(text.substring(0, equals));
      List<Map<String, String>> hits =
          out.stream()
              .filter(l -> equals < 0 || Slug.of(l.getOrDefault("product", "")).equals(product))
              .toList();
      if (hits.size() != 1) {
        problems.add(
            Mark.startOf("--epa"),
            hits.isEmpty()
                ? "no line of this pass is '" + text.substring(0, equals) + "'"
                : "the pass has several products, and '" + text + "' names none",
            "write one of "
                + String.join(", ", out.stream().map(l -> l.get("product") + "=NUMBER").toList()));
      } else {
        hits.get(0).put("epaRegNo", text.substring(equals + 1).strip());
      }
    }
    problems.throwIfAny();
    return out;
  }
}
