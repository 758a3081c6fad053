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
import picocli.CommandLine.Option;

/**
 * What was written down of a spraying, by the columns of the journal. Texts, since the journal's
 * reader is the one judge of what may stand in a cell.
 */
final class RecordOptions {
  @Option(
      names = "--date",
      paramLabel = "DATE",
      description =
          "Day on which it was sprayed; the mix file's, or today, when left out. Weather, hour and"
              + " what was seen in a mix file of another day are not taken.")
  @Nullable String date;

  @Option(
      names = "--acres",
      paramLabel = "N",
      description = "Acres that were sprayed; the whole field when left out.")
  @Nullable String acres;

  @Option(names = "--start", paramLabel = "TIME", description = "When it began, 10:30.")
  @Nullable String start;

  @Option(names = "--end", paramLabel = "TIME", description = "When it ended, 11:45.")
  @Nullable String end;

  @Option(names = "--wind", paramLabel = "MPH", description = "Wind as measured, 7.")
  @Nullable String wind;

  @Option(names = "--wind-from", paramLabel = "POINT", description = "Where it came from, NW.")
  @Nullable String windFrom;

  @Option(names = "--temp", paramLabel = "F", description = "Temperature of the air, 78.")
  @Nullable String temperature;

  @Option(
      names = "--stage",
      paramLabel = "STAGE",
      description = "Stage of the crop, V3, or the position: pre, post, stubble.")
  @Nullable String stage;

  @Option(names = "--target", paramLabel = "WEEDS", description = "What it was sprayed against.")
  @Nullable String target;

  @Option(names = "--applicator", paramLabel = "NAME", description = "The certified applicator.")
  @Nullable String applicator;

  @Option(names = "--cert", paramLabel = "NUMBER", description = "Number of the certificate.")
  @Nullable String certificate;

  @Option(
      names = "--epa",
      paramLabel = "[PRODUCT=]NUMBER",
      description =
          "EPA registration number of a product; its name is needed where there are several. May be"
              + " given more than once.")
  List<String> epaNumbers = List.of();

  @Option(names = "--note", paramLabel = "TEXT", description = "What else there is to say.")
  @Nullable String note;

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
    put(out, "date", date);
    put(out, "acres", acres);
    put(out, "startTime", start);
    put(out, "endTime", end);
    put(out, "windMph", wind);
    put(out, "windFrom", windFrom);
    put(out, "tempF", temperature);
    put(out, "cropStage", stage);
    put(out, "target", target);
    put(out, "applicator", applicator);
    put(out, "certNo", certificate);
    put(out, "note", note);
    return out;
  }

  boolean isEmpty() {
    return cells().isEmpty() && epaNumbers.isEmpty();
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
    for (String text : epaNumbers) {
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
