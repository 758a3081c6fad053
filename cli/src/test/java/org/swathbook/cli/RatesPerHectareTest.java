package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.measure.Rate;
import org.swathbook.measure.Unit;

/**
 * A rate written on a hectare is the rate that it is on an acre: 1 ha = 2.4710538 acres (NIST
 * Handbook 44, appendix C). Limits, remedies, mended tanks and costs are the same however it was
 * written.
 */
class RatesPerHectareTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir static Path dir;
  private static Path book;

  @BeforeAll
  static void makeTheBook() throws IOException {
    book = SmallBook.of(dir.resolve("book"), "ND-1", "ND-2");
  }

  private static String perHectare(String perAcre) {
    Rate rate = Rate.parse(perAcre);
    Rate out = rate.in(rate.isVolume() ? Unit.LITRE : Unit.KILOGRAM, Unit.HECTARE);
    return out.amount() + " " + out.unitText();
  }

  private static JsonNode check(String... doses) throws IOException {
    List<String> args = new ArrayList<>(List.of("--field", "ND-1", "--date", "2027-06-01"));
    args.addAll(List.of(doses));
    args.add("--json");
    Called called = Called.with("check", book, args.toArray(String[]::new));
    assertThat(called.out()).as(called.err()).isNotEmpty();
    return JSON.readTree(called.out());
  }

  @ParameterizedTest
  @CsvSource({
    "glyphosate-4.5sl, 48 fl oz/acre",
    "glyphosate-4.5sl, 12 fl oz/acre",
    "glufosinate-2.34sl, 20 fl oz/acre",
    "fomesafen-2sl, 30 fl oz/acre",
    "s-metolachlor-7.62ec, 1 pt/acre",
    "flumioxazin-51wg, 5 oz weight/acre"
  })
  void whatIsSaidOfATankIsTheSame(String product, String rate) throws IOException {
    JsonNode acre = check(product + " " + rate);
    JsonNode hectare = check(product + " " + perHectare(rate));
    assertThat(acre.get("findings")).isNotEmpty();
    assertThat(hectare.get("findings")).isEqualTo(acre.get("findings"));
    assertThat(hectare.get("verdict")).isEqualTo(acre.get("verdict"));
    assertThat(hectare.path("remedyMix").path("steps"))
        .isEqualTo(acre.path("remedyMix").path("steps"));
  }

  /** By hand: the tank's rate on an acre is 1.13 lb ae at most, 32 fl oz of 4.5 lb ae/gal. */
  @Test
  void aRemedyStaysWithinTheLimit() throws IOException {
    assertThat(check("glyphosate-4.5sl 3 L/ha").get("findings").findValuesAsText("remedy"))
        .contains("at most 32 fl oz/acre of glyphosate-4.5sl");
  }

  @Test
  void aProgramCostsTheSame() throws IOException {
    ObjectNode acre = season("2 pt/acre", "per-acre");
    ObjectNode hectare = season(perHectare("2 pt/acre"), "per-hectare");
    assertThat(acre.get("costPerAcre").asDouble()).isPositive();
    assertThat(hectare.get("costPerAcre")).isEqualTo(acre.get("costPerAcre"));
    assertThat(hectare.get("netPerAcre")).isEqualTo(acre.get("netPerAcre"));
  }

  /** Whatever the units in which a product and its practical step are spoken of. */
  @Test
  void aProductIsPlannedAtTheSameSteps() throws IOException {
    Path other = SmallBook.of(dir.resolve("other"), "ND-1");
    Path products = Files.createDirectories(other.resolve("catalog/products"));
    String entry = Called.with("catalog", "show", "s-metolachlor-7.62ec", "--file").out();
    assertThat(entry).contains("unit: pt/acre").contains("step: 0.1 pt/acre");
    Files.writeString(
        products.resolve("s-metolachlor-7.62ec.yaml"),
        entry
            .replace("unit: pt/acre", "unit: L/ha")
            .replace("step: 0.1 pt/acre", "step: 1.6 fl oz/acre"));
    JsonNode usual = planned(book);
    JsonNode hectares = planned(other);
    assertThat(usual.toString()).contains("s-metolachlor");
    assertThat(hectares.get("costPerAcre")).isEqualTo(usual.get("costPerAcre"));
    assertThat(hectares.get("controlPct")).isEqualTo(usual.get("controlPct"));
    assertThat(hectares.toString()).contains("\"unit\":\"L/ha\"");
  }

  private static JsonNode planned(Path of) throws IOException {
    Called called =
        Called.with(
            "plan",
            of,
            "ND-1",
            "--effort",
            "quick",
            "--max-passes",
            "1",
            "--must-include",
            "s-metolachlor",
            "--json");
    return JSON.readTree(called.out()).get("fields").get(0).get("programs").get(0);
  }

  private static ObjectNode season(String rate, String name) throws IOException {
    write(rate, name);
    Called called = Called.with("season", book, name, "--json");
    return (ObjectNode) JSON.readTree(called.out()).get("summary");
  }

  private static void write(String rate, String name) throws IOException {
    Path programs = Files.createDirectories(book.resolve("programs"));
    Files.writeString(
        programs.resolve(name + ".yaml"),
        """
        format: swathbook.program/1
        name: %s
        field: ND-1
        passes:
          - at: planting
            mix:
              - {product: s-metolachlor-7.62ec, rate: %s}
        """
            .formatted(name, rate));
  }
}
