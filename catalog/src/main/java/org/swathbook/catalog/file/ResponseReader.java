package org.swathbook.catalog.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Unit;
import org.swathbook.source.Cell;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvReader;
import org.swathbook.source.CsvRow;
import org.swathbook.source.MapReader;
import org.swathbook.source.Mark;
import org.swathbook.source.Problems;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/** Reads the table of expected control. */
final class ResponseReader {
  static final CsvColumns COLUMNS =
      CsvColumns.required(
          "weed",
          "ingredient",
          "timing",
          "emaxPct",
          "lowPct",
          "highPct",
          "controlHeightIn",
          "source",
          "confidence");

  /** What a row is about; a later file's row takes the place of an earlier one's. */
  record Key(WeedId weed, IngredientId ingredient, Response.Timing timing) {}

  private final Names<WeedId> weeds;
  private final Names<IngredientId> ingredients;
  private final Problems problems;

  ResponseReader(Names<WeedId> weeds, Names<IngredientId> ingredients, Problems problems) {
    this.weeds = weeds;
    this.ingredients = ingredients;
    this.problems = problems;
  }

  Map<Key, Response> read(CatalogFile file) {
    Map<Key, Response> out = new LinkedHashMap<>();
    Map<Key, Mark> places = new LinkedHashMap<>();
    for (CsvRow row :
        new CsvReader().read(file.shown(), file.content(), COLUMNS, problems).rows()) {
      read(row, file.starter())
          .ifPresent(
              r -> {
                Key key = new Key(r.weed(), r.ingredient(), r.timing());
                out.put(key, r);
                Mark first = places.putIfAbsent(key, row.mark());
                if (first != null) {
                  problems.add(
                      row.mark(),
                      "this weed, ingredient and timing stand in the table twice",
                      "keep one row; the first is in line " + first.line());
                }
              });
    }
    return out;
  }

  private Optional<Response> read(CsvRow row, boolean sourceNeeded) {
    int before = problems.count();
    Optional<WeedId> weed = cell(row, "weed", weeds.known(), "AMAPA");
    Optional<IngredientId> ingredient = cell(row, "ingredient", ingredients.known(), "glyphosate");
    Optional<String> timing =
        cell(row, "timing", Texts.oneOf(List.of("pre", "post", "burndown")), "pre");
    Optional<Double> typical = cell(row, "emaxPct", ResponseReader::percent, "95");
    Optional<Double> low = cell(row, "lowPct", ResponseReader::percent, "90");
    Optional<Double> high = cell(row, "highPct", ResponseReader::percent, "99");
    Optional<Double> height =
        row.find("controlHeightIn")
            .flatMap(c -> MapReader.cell(c, ResponseReader::inches, "4", problems));
    Optional<String> confidence =
        cell(row, "confidence", Texts.oneOf(List.of("high", "medium", "low")), "medium");
    if (sourceNeeded && row.find("source").isEmpty()) {
      problems.add(row.mark("source"), "the row has no source", "write one, or 'from memory'");
    }
    if (problems.count() > before) {
      return Optional.empty();
    }
    if (low.orElseThrow() > typical.orElseThrow() || typical.get() > high.orElseThrow()) {
      problems.add(
          row.mark("emaxPct"),
          "the typical control does not lie between the low and the high one",
          "let lowPct, emaxPct and highPct rise");
      return Optional.empty();
    }
    if (timing.orElseThrow().equals("pre") && height.isPresent()) {
      problems.add(
          row.mark("controlHeightIn"),
          "a height stands in a row on control from the soil",
          "leave controlHeightIn empty in rows with timing 'pre'");
      return Optional.empty();
    }
    return Optional.of(
        new Response(
            weed.orElseThrow(),
            ingredient.orElseThrow(),
            Response.Timing.valueOf(timing.get().toUpperCase(Locale.ROOT)),
            typical.get(),
            low.get(),
            high.get(),
            height.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
            row.find("source").map(c -> new Source(c.text())).orElse(Source.NOT_GIVEN),
            confidence.orElseThrow()));
  }

  private <T> Optional<T> cell(CsvRow row, String column, TextParser<T> parser, String example) {
    Optional<Cell> cell = row.find(column);
    if (cell.isEmpty() && row.header().has(column)) {
      problems.add(
          row.mark(column), "'" + column + "' is empty", "write for example '" + example + "'");
    }
    return cell.flatMap(c -> MapReader.cell(c, parser, example, problems));
  }

  private static double percent(String text) {
    double value = Texts.number(text);
    if (value < 0 || value > 100) {
      throw new MeasureException("'" + text + "' is no percentage; write 0 to 100, without sign");
    }
    return value;
  }

  /** Centimetres of a bare number of inches. */
  private static double inches(String text) {
    double value = Texts.number(text);
    if (!(value > 0)) {
      throw new MeasureException("'" + text + "' is no height; write inches above zero");
    }
    return Unit.CENTIMETRE.fromSi(Unit.INCH.toSi(value));
  }
}
