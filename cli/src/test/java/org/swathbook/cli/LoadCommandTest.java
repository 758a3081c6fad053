package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.terminal.ExitCode;

/** {@code load} on the demo book. */
class LoadCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path DEMO = ProgramProcess.CLI.resolve("../demo-data");

  @TempDir Path folder;

  private Path mix(String yaml) throws IOException {
    Path file = folder.resolve("mix.yaml");
    Files.writeString(file, "format: swathbook.mix/1\nfield: ND-1\ndate: 2027-06-08\n" + yaml);
    return file;
  }

  private static final String GLYPHOSATE =
      """
      cropStage: V3
      products: [{product: glyphosate-4.5sl, rate: 32 fl oz/acre}]
      adjuvants: [{kind: ammonium-sulfate, rate: 8.5 lb/100 gal}]
      """;

  @Test
  void theDemoSheetIsAsKept() {
    Called text = Called.with("load", DEMO, "nd-1-june");

    assertThat(text.code()).isEqualTo(ExitCode.DONE);
    assertThat(text.out().lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
    assertThat(text.out()).contains("Verdict: caution").contains("The label is the law.");
    Goldens.check("demo/load.txt", text.out());
    Goldens.check("demo/load.json", Called.with("load", DEMO, "nd-1-june", "--json").out());
  }

  /** 76 acres of 15 gal are 1,140 gal: three tanks of 350 would leave 90 gal, a quarter of one. */
  @Test
  void loadsByTheTankAndTheAcresOfTheCall() throws IOException {
    JsonNode rest =
        JSON.readTree(Called.with("load", DEMO, "nd-1-june", "--json", "--tank", "350").out());
    assertThat(rest.get("split").textValue()).isEqualTo("full-and-rest");
    assertThat(rest.get("loads")).hasSize(4);

    Called called = Called.with("load", DEMO, "nd-1-june", "--tank", "375", "--acres", "76");
    assertThat(called.out().replaceAll("\\s+", " "))
        .contains("4 equal loads below a tank of 375 gal, since full ones would leave 15 gal")
        .contains("Loads 1 to 4, each 285 gal on 19 acres")
        .contains("All loads together");

    JsonNode few =
        JSON.readTree(Called.with("load", DEMO, "nd-1-june", "--json", "--acres", "10").out());
    assertThat(few.get("acres").decimalValue()).isEqualByComparingTo("10");
    assertThat(few.get("fieldAcres").decimalValue()).isEqualByComparingTo("76");
    assertThat(few.get("loads").get(0).get("products").get(0).get("measure").textValue())
        .isEqualTo("2 gal 2 qt");
    assertThat(Called.with("load", DEMO, "nd-1-june", "--acres", "80").out())
        .contains("more acres than the field has (76)");
  }

  /**
   * A jug of 2.5 gal holds 20 pt, or 320 fl oz: at 2 pt/acre and at 32 fl oz/acre ten acres, at
   * 1.05 pt/acre 19.05. However much is sprayed, a jug does no more.
   */
  @Test
  void acresThatAPackageDoes() throws IOException {
    assertThat(Called.with("load", DEMO, "nd-1-june").out().replaceAll("\\s+", " "))
        .contains("Acres that a package does")
        .contains("s-metolachlor-7.62ec 19 (2.5 gal)")
        .contains("2-4-d-choline-3.8sl 10 (2.5 gal)")
        .contains("glyphosate-4.5sl 10 (2.5 gal)");
    JsonNode few =
        JSON.readTree(Called.with("load", DEMO, "nd-1-june", "--json", "--acres", "7").out());
    for (JsonNode p : few.get("together").get("products")) {
      assertThat(p.get("acresPerPackage").doubleValue())
          .isEqualTo(p.get("product").textValue().startsWith("s-met") ? 19.05 : 10.0);
    }
  }

  @Test
  void aBlockedTankGetsItsVerdictAndNoLoad() throws IOException {
    Path mix =
        mix(
            """
            cropStage: V3
            products: [{product: glyphosate-4.5sl, rate: 320 fl oz/acre}]
            carrier: {volume: 15 gal/acre}
            sprayer: {tank: 1200 gal}
            """);
    Called called = Called.with("load", DEMO, mix.toString());

    assertThat(called.code()).isEqualTo(ExitCode.BLOCKED);
    assertThat(called.out())
        .contains("Verdict: blocked")
        .contains("NO LOAD")
        .contains("The label is the law.")
        .doesNotContain("Load 1")
        .doesNotContain("\n  NOTE ")
        .doesNotContain("To be signed");
    Called json = Called.with("load", DEMO, mix.toString(), "--json");
    assertThat(json.code()).isEqualTo(ExitCode.BLOCKED);
    assertThat(JSON.readTree(json.out()).has("loads")).isFalse();
    assertThat(JSON.readTree(json.out()).get("verdict").textValue()).isEqualTo("blocked");
  }

  @Test
  void whatIsNotKnownIsSaid() throws IOException {
    Path mix =
        mix(
            GLYPHOSATE.replace("8.5 lb/100 gal", "as the label says")
                + "carrier: {volume: 15 gal/acre}\nothers: [pyrethroid]\n");
    String out = Called.with("load", DEMO, mix.toString(), "--tank", "1200").out();

    assertThat(out)
        .containsPattern("ammonium-sulfate +NOT KNOWN +as the label says")
        .contains("What the sprayer held is NOT KNOWN")
        .contains("NOT TESTED. Hard water ties up glyphosate")
        .contains("strength that is not known")
        .contains("NOT ON THIS SHEET: pyrethroid")
        .contains("Protective equipment, the strictest of the label of glyphosate-4.5sl");
  }

  /** A tank of which one label was read and one was not says both, on paper and for scripts. */
  @Test
  void whatIsWornIsTheStrictestAndWhatIsNotKnownIsSaid() throws IOException {
    Path mix =
        mix(
            """
            products:
              - {product: glyphosate-4.5sl, rate: 32 fl oz/acre}
              - {product: 2-4-d-choline-3.8sl, rate: 2 pt/acre}
            carrier: {volume: 15 gal/acre}
            """);

    String out = Called.with("load", DEMO, mix.toString(), "--tank", "1200").out();
    Called json = Called.with("load", DEMO, mix.toString(), "--tank", "1200", "--json");

    assertThat(out.replaceAll("\\s+", " "))
        .contains("waterproof gloves")
        .contains("NOT STATED of 2-4-d-choline-3.8sl - read the label; the strictest of the tank");
    JsonNode root = JSON.readTree(json.out());
    assertThat(root.get("protectiveEquipment").get("handlers").toString())
        .isEqualTo("[\"long-sleeves\",\"shoes-and-socks\",\"waterproof-gloves\"]");
    assertThat(root.get("protectiveEquipmentUnknown").toString())
        .isEqualTo("[\"2-4-d-choline-3.8sl\"]");
  }

  /** Newest labels of paraquat forbid it (Helms, Northeastern IPM Center). */
  @Test
  void noJarTestWithParaquat() throws IOException {
    Path mix =
        mix(
            """
            products:
              - {ingredient: paraquat, rate: 0.5 lb cation/acre}
              - {product: metribuzin-75wg, rate: 6 oz weight/acre}
            adjuvants: [{kind: nonionic-surfactant, rate: 0.25 % v/v}]
            carrier: {volume: 20 gal/acre}
            """);
    onPlantingDay(mix);
    Called called = Called.with("load", DEMO, mix.toString(), "--tank", "1200");

    assertThat(called.code()).isEqualTo(ExitCode.DONE);
    assertThat(called.out())
        .contains("None: the label of paraquat forbids it.")
        .contains("Restricted use, for certified applicators only: paraquat.")
        .containsPattern("wait +until all that is dry is uniform")
        .contains("WG (dispersible granules); 6 oz weight/acre")
        .doesNotContain("Into a clear jar");
  }

  private static void onPlantingDay(Path mix) throws IOException {
    Files.writeString(mix, Files.readString(mix).replace("date: 2027-06-08", "date: 2027-05-11"));
  }

  @Test
  void fertilizerTakesThePlaceOfWater() throws IOException {
    Path mix =
        mix(
            """
            products: [{product: metribuzin-75wg, rate: 6 oz weight/acre}]
            carrier: {volume: 15 gal/acre, liquid: liquid-fertilizer}
            """);
    Files.writeString(mix, Files.readString(mix).replace("date: 2027-06-08", "date: 2027-05-01"));
    Called called = Called.with("load", DEMO, mix.toString(), "--tank", "1200", "--json");

    assertThat(called.err()).isEmpty();
    JsonNode root = JSON.readTree(called.out());
    assertThat(root.get("loads").get(0).get("waterGallons").isNull()).isTrue();
    assertThat(root.get("loads").get(0).get("carrierGallons").decimalValue())
        .isEqualByComparingTo("1140");
    assertThat(root.get("water").get("state").textValue()).isEqualTo("no-water");
  }

  @Test
  void everyMistakeIsOnePlainLine() throws IOException {
    Path bare = mix(GLYPHOSATE);
    Called called = Called.with("load", DEMO, bare.toString());
    assertThat(called.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(called.out()).isEmpty();
    assertThat(called.err().lines()).hasSize(2).noneMatch(l -> l.contains("Exception"));
    assertThat(called.err())
        .contains("names no spray volume")
        .contains("does not say what the tank holds");

    Path full = mix(GLYPHOSATE + "carrier: {volume: 0.2 gal/acre}\n");
    assertThat(Called.with("load", DEMO, full.toString(), "--tank", "0.001").err())
        .contains("more than 1000 loads of this tank");

    Path twice =
        mix(
            GLYPHOSATE.replace("[{kind", "[{kind: ammonium-sulfate, rate: 2.5 % v/v}, {kind")
                + "carrier: {volume: 15 gal/acre}\n");
    Called both = Called.with("load", DEMO, twice.toString(), "--tank", "1200");
    assertThat(both.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(both.err()).contains("written by weight and by volume");

    assertThat(Called.with("load", DEMO, "nd-1-june", "--acres", "0").err())
        .contains("--acres must be above zero");
    assertThat(Called.with("load", DEMO, "nd-1-june", "--tank", "NaN").err())
        .contains("--tank must be above zero");
    assertThat(Called.with("load", DEMO, "nd-1-july").err()).contains("nd-1-june");
    assertThat(Called.with("load", DEMO).code()).isEqualTo(ExitCode.WRONG_INPUT);
  }

  /** The second pass of the demo program is sprayed at 15 gal/acre; the program knows no tank. */
  @Test
  void aPassOfAProgramIsLoaded() {
    Called called =
        Called.with(
            "load",
            DEMO,
            "nd-1-two-layers",
            "--pass",
            "2",
            "--date",
            "2027-06-06",
            "--tank",
            "1200");

    assertThat(called.err()).isEmpty();
    assertThat(called.code()).isEqualTo(ExitCode.DONE);
    assertThat(called.out())
        .contains("76 acres at 15 gal/acre are 1,140 gal")
        .contains("6 Jun 2027")
        .contains("glufosinate-2.34sl")
        .contains("What the sprayer held is NOT KNOWN");
  }

  @Test
  void aPassThatNamesNoVolumeGetsItFromTheCall() {
    String[] pass = {"nd-1-two-layers", "--pass", "1", "--date", "2027-05-11", "--tank", "1200"};
    Called none = Called.with("load", DEMO, pass);
    assertThat(none.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(none.err()).contains("names no spray volume").contains("--volume 15");

    Called given =
        Called.with(
            "load",
            DEMO,
            Stream.concat(Stream.of(pass), Stream.of("--volume", "20")).toArray(String[]::new));
    assertThat(given.code()).isEqualTo(ExitCode.DONE);
    assertThat(given.out()).contains("76 acres at 20 gal/acre are 1,520 gal");

    assertThat(
            Called.with(
                    "load",
                    DEMO,
                    "nd-1-two-layers",
                    "--pass",
                    "2",
                    "--volume",
                    "10",
                    "--date",
                    "2027-06-06")
                .err())
        .contains("says itself that it is sprayed at 15 gal/acre");
  }

  /** What is typed makes the same loads as the same written into a file. */
  @Test
  void typedProductsAreLoadedAsThoseOfAFile() throws IOException {
    Path written =
        mix(
            GLYPHOSATE.replace("cropStage: V3\n", "")
                + "carrier: {volume: 15 gal/acre}\nsprayer: {tank: 1200 gal}\n");
    Called file = Called.with("load", DEMO, written.toString());
    Called typed =
        Called.with(
            "load",
            DEMO,
            "--field",
            "nd-1",
            "--date",
            "2027-06-08",
            "--volume",
            "15",
            "--tank",
            "1200",
            "glyphosate-4.5sl 32 fl oz/acre",
            "ammonium-sulfate 8.5 lb/100 gal");

    assertThat(typed.err()).isEmpty();
    assertThat(typed.out()).isEqualTo(file.out());
  }

  @Test
  void whatBelongsTogetherIsAskedForTogether() {
    assertThat(Called.with("load", DEMO, "a", "b", "--tank", "800").err())
        .contains("made one at a time");
    assertThat(Called.with("load", DEMO, "nd-1-june", "--date", "2027-06-08").err())
        .contains("a mix file says them itself");
    assertThat(Called.with("load", DEMO, "a", "--field", "ND-1", "--pass", "1").err())
        .contains("--pass is of a program");
    assertThat(Called.with("load", DEMO, "nd-1-two-layers", "--pass", "3").err())
        .contains("has no pass 3")
        .contains("write 1 to 2");
    assertThat(
            Called.with("load", DEMO, "nd-1-two-layers", "--pass", "2", "--date", "2028-06-06")
                .err())
        .contains("2028-06-06 is not in the season 2027");
    assertThat(Called.with("load", DEMO, "a b", "--field", "ND-1", "--volume", "-1").err())
        .contains("--volume must be above zero");
  }
}
