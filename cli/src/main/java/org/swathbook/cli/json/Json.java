package org.swathbook.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Optional;
import org.swathbook.cli.report.Cautions;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.measure.Inches;
import org.swathbook.measure.Money;

/** Nodes and numbers of our JSON, and how they are written: two spaces, LF, no exponents. */
final class Json {
  static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private static final ObjectWriter WRITER =
      JsonMapper.builder()
          .enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN)
          .build()
          .writer(
              new DefaultPrettyPrinter(
                      Separators.createDefaultInstance()
                          .withObjectFieldValueSpacing(Separators.Spacing.AFTER))
                  .withObjectIndenter(new DefaultIndenter("  ", "\n")));

  private Json() {}

  /**
   * Makes ready what writes, in a thread of its own: for a command that computes for seconds by all
   * processors, of which one alone would be busy with this at the end.
   */
  static void begin() {
    Thread thread =
        new Thread(() -> write(NODES.objectNode().put("number", BigDecimal.ONE)), "json");
    thread.setDaemon(true);
    thread.start();
  }

  /** A result with its format, the day it is for and the cautions. */
  static ObjectNode document(String command, ReportHead head) {
    ObjectNode root = NODES.objectNode();
    root.put("format", "swathbook." + command + "/1");
    root.put("today", head.today().toString());
    root.put("book", head.book());
    root.put("season", head.season());
    ObjectNode weather = root.putObject("weatherYears");
    for (ReportHead.Station s : head.stations()) {
      s.years().forEach(weather.putArray(s.id())::add);
    }
    root.set("notes", texts(head.notes()));
    root.set("cautions", texts(Cautions.ALL));
    return root;
  }

  static String write(ObjectNode root) {
    try {
      return WRITER.writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain nodes cannot fail to be written", e);
    }
  }

  static JsonNode money(Money m) {
    return DecimalNode.valueOf(BigDecimal.valueOf(m.cents(), 2));
  }

  static JsonNode money(Optional<Money> m) {
    return m.map(Json::money).orElse(NODES.nullNode());
  }

  /** Percent to one decimal. A decimal node keeps the zero of 24.0. */
  static JsonNode percent(double percent) {
    return fixed(percent, 1);
  }

  /** Inches to one decimal. */
  static JsonNode inches(double cm) {
    return fixed(Inches.ofCm(cm), 1);
  }

  /** Rounded half up to fixed decimals; null for what is no number. */
  static JsonNode fixed(double value, int decimals) {
    return Double.isFinite(value)
        ? DecimalNode.valueOf(new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP))
        : NODES.nullNode();
  }

  /** Rounded half up to so many digits that count, without an exponent. */
  static JsonNode significant(double value, int digits) {
    if (!Double.isFinite(value)) {
      return NODES.nullNode();
    }
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_UP));
    return DecimalNode.valueOf(rounded.scale() < 0 ? rounded.setScale(0) : rounded);
  }

  static ArrayNode texts(Collection<String> texts) {
    ArrayNode array = NODES.arrayNode();
    texts.forEach(array::add);
    return array;
  }
}
