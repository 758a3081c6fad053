package org.swathbook.catalog.file;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.Source;
import org.swathbook.measure.Unit;

/** Writes the table of expected control. */
final class ResponsesWriter {
  private ResponsesWriter() {}

  static String write(Collection<Response> responses) {
    StringBuilder out = new StringBuilder();
    row(out, ResponseReader.COLUMNS.required());
    for (Response r : responses) {
      row(
          out,
          List.of(
              r.weed().value(),
              r.ingredient().value(),
              r.timing().name().toLowerCase(Locale.ROOT),
              ExactText.number(r.emaxPct()),
              ExactText.number(r.lowPct()),
              ExactText.number(r.highPct()),
              r.controlHeightCm().isPresent() ? inches(r.controlHeightCm().getAsDouble()) : "",
              r.source().equals(Source.NOT_GIVEN) ? "" : r.source().text(),
              r.confidence()));
    }
    return out.toString();
  }

  /** The inches that are read as these centimetres, or the nearest where none are. */
  private static String inches(double cm) {
    double guess = Unit.INCH.fromSi(Unit.CENTIMETRE.toSi(cm));
    return ExactText.number(
        ExactText.inverse(v -> Unit.CENTIMETRE.fromSi(Unit.INCH.toSi(v)), guess, cm).orElse(guess));
  }

  private static void row(StringBuilder out, List<String> cells) {
    out.append(cells.stream().map(ResponsesWriter::cell).collect(Collectors.joining(",")))
        .append('\n');
  }

  private static String cell(String text) {
    boolean quotes = text.chars().anyMatch(c -> ",\"\r\n".indexOf(c) >= 0);
    return quotes ? '"' + text.replace("\"", "\"\"") + '"' : text;
  }
}
