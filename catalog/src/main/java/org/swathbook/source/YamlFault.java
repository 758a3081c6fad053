package org.swathbook.source;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.reader.ReaderException;

/** Says in plain words what the YAML parser stumbled over. */
final class YamlFault {

  /** A phrase of the parser, and the same for people who do not write parsers. */
  private record Phrase(String parser, String what, String right) {}

  private static final List<Phrase> PHRASES =
      List.of(
          new Phrase(
              "mapping values are not allowed here",
              "a colon where none can stand",
              "put a text with ': ' in quotes, or check the indentation of this line"),
          new Phrase(
              "but got <stream end>",
              "a bracket is not closed",
              "close what '[' or '{' opened before the end of the file"),
          new Phrase(
              "but found '<stream end>'",
              "a bracket is not closed",
              "close what '[' or '{' opened before the end of the file"),
          new Phrase("but got", "a bracket is not closed", "write ',' or the closing bracket here"),
          new Phrase(
              "found unexpected end of stream",
              "a quote is not closed",
              "close the quote that starts here"),
          new Phrase(
              "but found '<scalar>'",
              "text follows where the value has already ended",
              "put the whole text in one pair of quotes"),
          new Phrase(
              "expected <block end>",
              "this line does not fit those above it",
              "give all keys of a map, and all dashes of a list, the same indentation"),
          new Phrase(
              "could not find expected ':'",
              "a line that is no 'key: value'",
              "write a colon and a space after the key"),
          new Phrase(
              "that cannot start any token",
              "a text that starts with a sign",
              "put the text in quotes"),
          new Phrase(
              "expected chomping or indentation indicators",
              "a value that starts with '>' or '|'",
              "put it in quotes, as \"> 7\""),
          new Phrase("undefined alias", "an alias (*)", "write the value again in full"),
          new Phrase(
              "Expected a field name",
              "a key that is no plain word",
              "write a word as key; put a text with brackets in quotes"));

  private YamlFault() {}

  /**
   * The problem of what the parser says.
   *
   * @param bracket where the innermost bracket opened that is still open
   */
  static Problem problem(String file, JsonProcessingException error, Optional<Mark> bracket) {
    JsonLocation at = error.getLocation();
    Mark mark =
        at == null
            ? Mark.startOf(file)
            : new Mark(file, Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr()));
    String said = String.valueOf(error.getOriginalMessage());
    if (error.getCause() instanceof MarkedYAMLException yaml) {
      // An unclosed quote or bracket is mended where it opens, not where the file ends.
      boolean inQuotes = yaml.getProblem().contains("end of stream");
      org.yaml.snakeyaml.error.Mark place =
          inQuotes ? yaml.getContextMark() : yaml.getProblemMark();
      if (yaml.getProblem().contains("<stream end>") && bracket.isPresent()) {
        mark = bracket.get();
      } else if (place != null) {
        mark = new Mark(file, place.getLine() + 1, place.getColumn() + 1);
      }
      said = yaml.getProblem();
    } else if (error.getCause() instanceof ReaderException) {
      return new Problem(
          mark, "a control character stands in the file", "write the file as plain text");
    }
    for (Phrase phrase : PHRASES) {
      if (said.contains(phrase.parser())) {
        return new Problem(mark, phrase.what(), phrase.right());
      }
    }
    String first = said.lines().findFirst().orElse("").strip();
    return new Problem(
        mark,
        "this is no YAML" + (first.isEmpty() ? "" : " (" + first + ")"),
        "check brackets, quotes and indentation around here");
  }
}
