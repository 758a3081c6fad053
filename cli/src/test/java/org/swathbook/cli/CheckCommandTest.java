package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.terminal.ExitCode;

/** {@code check} on the demo book: from a file, typed, a whole program, with a forecast. */
class CheckCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path DEMO = ProgramProcess.CLI.resolve("../demo-data");

  @TempDir Path folder;

  @Test
  void theDemoTankIsAsKept() {
    Called text = Called.with("check", DEMO, "nd-1-june");

    assertThat(text.code()).isEqualTo(ExitCode.DONE);
    assertThat(text.out().lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
    assertThat(text.out()).contains("Verdict: caution").contains("The label is the law.");
    Goldens.check("demo/check.txt", text.out());
    Goldens.check("demo/check.json", Called.with("check", DEMO, "nd-1-june", "--json").out());
  }

  private Called paraquat(String... more) {
    List<String> call = new ArrayList<>(List.of("--field", "ND-2", "--date", "2027-04-20"));
    call.addAll(List.of(more));
    call.add("paraquat-2sl 2 pt/acre");
    return Called.with("check", DEMO, call.toArray(String[]::new));
  }

  @Test
  void whoSpraysWhenAndWithWhatTrainingIsToldInTheCall() {
    assertThat(paraquat().out())
        .contains("whether the applicator has had the training in paraquat");
    assertThat(paraquat("--applicator", "R. Example", "--training", "none").out())
        .contains("R. Example is named as the applicator without the number of a certificate")
        .contains("R. Example has not had the training in paraquat");
    assertThat(
            paraquat("--applicator", "R. Example", "--cert", "NE-1", "--training", "Paraquat")
                .out())
        .doesNotContain("R. Example");
    assertThat(paraquat("--time", "10:30").out())
        .contains("20 Apr 2027 10:30")
        .contains("whether an inversion stands, or the wind");
  }

  @Test
  void whatIsWrongWithThemIsSaidInOneLine() {
    assertThat(paraquat("--cert", "NE-1").err())
        .contains("--cert and --training need --applicator");
    assertThat(paraquat("--time", "25").err()).contains("write it as 09:30");
    Called unsure = paraquat("--incorporated", "perhaps");
    assertThat(unsure.err()).contains("--incorporated must be yes or no");
    assertThat(unsure.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(Called.with("check", DEMO, "--program", "nd-1-two-layers", "--time", "10:30").err())
        .contains("--program judges a program alone");
  }

  @Test
  void aTankTypedIsJudgedAndABlockedOneEndsWithOne() throws IOException {
    Called called =
        Called.with(
            "check",
            DEMO,
            "--json",
            "--field",
            "nd-1",
            "--date",
            "2027-05-17",
            "--volume",
            "15",
            "2-4-d-choline-3.8sl 2 pt/acre",
            "glyphosate-4.5sl 320 fl oz/acre",
            "ammonium-sulfate 8.5 lb/100 gal");

    assertThat(called.code()).isEqualTo(ExitCode.BLOCKED);
    JsonNode root = JSON.readTree(called.out());
    assertThat(root.get("verdict").textValue()).isEqualTo("blocked");
    assertThat(root.get("findings"))
        .anySatisfy(
            f -> {
              assertThat(f.get("rule").textValue()).isEqualTo("rate-above-use");
              assertThat(f.get("remedy").textValue()).contains("fl oz/acre of glyphosate-4.5sl");
            });
    JsonNode mended = root.get("remedyMix");
    assertThat(mended.get("verdict").textValue()).isNotEqualTo("blocked");
    assertThat(mended.get("changes")).isNotEmpty();
  }

  /**
   * Palmer amaranth of which most plants resist glyphosate stands too tall for any partner: a legal
   * rate would do no more. What stands against the rate says its own remedy.
   */
  @Test
  void noTankIsOfferedThatWorksOnNoneOfTheDriverWeeds() throws IOException {
    JsonNode root =
        JSON.readTree(
            Called.with(
                    "check",
                    DEMO,
                    "--json",
                    "--field",
                    "nd-1",
                    "--date",
                    "2027-06-08",
                    "glyphosate-4.5sl 320 fl oz/acre")
                .out());
    assertThat(root.get("met").get("weeds"))
        .anySatisfy(
            w -> {
              assertThat(w.get("weed").textValue()).isEqualTo("AMAPA");
              assertThat(w.get("foliarSites").intValue()).isZero();
            });
    assertThat(root.has("remedyMix")).isFalse();
  }

  /**
   * The program has 0.38 lb of metribuzin and the journal none yet this season; of the cap of the
   * starter catalog, 0.75 lb ai/acre a season in soybean, 0.37 are left.
   */
  @Test
  void theCapsOfAProgramCountItsPassesToCome() throws IOException {
    Called text = Called.with("check", DEMO, "--program", "nd-1-two-layers");
    assertThat(text.out())
        .containsPattern(
            "metribuzin +0.38 +0.75 +0.37 +1, left not stated +metribuzin ai per season");
    JsonNode json =
        JSON.readTree(Called.with("check", DEMO, "--program", "nd-1-two-layers", "--json").out());
    JsonNode metribuzin =
        StreamSupport.stream(json.get("ledger").spliterator(), false)
            .filter(l -> l.get("ingredient").asText().equals("metribuzin"))
            .findFirst()
            .orElseThrow();
    assertThat(metribuzin.get("used").asDouble()).isEqualTo(0.38);
    assertThat(metribuzin.get("used").asDouble() + metribuzin.get("left").asDouble())
        .isCloseTo(metribuzin.get("cap").asDouble(), within(0.0001));
  }

  /** Six actives of six sites; then flumioxazin and fomesafen, both of site 14 (HRAC). */
  @Test
  void whatAProgramUsesTwiceIsSaid() throws IOException {
    assertThat(Called.with("check", DEMO, "--program", "nd-1-two-layers").out())
        .contains("no active and no site of action more than once");
    Path program = folder.resolve("twice.yaml");
    Files.writeString(
        program,
        Files.readString(DEMO.resolve("programs/nd-1-two-layers.yaml"))
            .replace(
                "ingredient: metribuzin, rate: 0.38 lb ai/acre",
                "product: fomesafen-2sl, rate: 16 fl oz/acre"));
    assertThat(Called.with("check", DEMO, "--program", program.toString()).out())
        .contains(
            "site 14: fomesafen in fomesafen-2sl (pass 1), flumioxazin in flumioxazin-51wg (pass 1)");
  }

  /** 128 fl oz are a gallon: 0.59 lb / 2.34 lb a gallon is 0.2521 gal, 32.27 fl oz. */
  @Test
  void poundsOfAnActiveAreReckonedIntoItsProductInWords() {
    String out =
        Called.with(
                "check",
                DEMO,
                "--field",
                "ND-1",
                "--volume",
                "15",
                "--date",
                "2027-06-08",
                "glufosinate-ammonium 0.59 lb ai/acre")
            .out()
            .replaceAll("\\s+", " ");
    assertThat(out)
        .contains(
            "0.59 lb ai/acre of glufosinate-ammonium / 2.34 lb ai/gal of glufosinate-2.34sl = 0.2521"
                + " gal/acre = 32.27 fl oz/acre");
    assertThat(Called.with("check", DEMO, "nd-2-june").out()).doesNotContain(" gal/acre = ");
  }

  /** Hours as the starter catalog has them, from University of Nebraska 2016, rainfast periods. */
  @Test
  void theHoursWithoutRainOfEachActiveAreSaid() throws IOException {
    assertThat(Called.with("check", DEMO, "nd-1-june").out().replaceAll("\\s+", " "))
        .contains(
            "hours without rain after spraying, by the catalog: 2,4-D choline 1, glyphosate 4");
    JsonNode json = JSON.readTree(Called.with("check", DEMO, "nd-1-june", "--json").out());
    // S-metolachlor works through the soil alone.
    assertThat(json.get("rainFree")).hasSize(2);
    assertThat(json.get("rainFree").get(1).get("hours").asDouble()).isEqualTo(4);
  }

  @Test
  void aWholeProgramIsJudgedAsASeasonJudgesIt() throws IOException {
    JsonNode check =
        JSON.readTree(Called.with("check", DEMO, "--program", "nd-1-two-layers", "--json").out());
    JsonNode season = JSON.readTree(Called.with("season", DEMO, "nd-1-two-layers", "--json").out());

    assertThat(check.get("findings")).isEqualTo(season.get("findings"));
    assertThat(Called.with("check", DEMO, "--program", "nd-1-two-layers").out())
        .contains("PROGRAM: ")
        .contains("Verdict: ");
  }

  @Test
  void everyMistakeIsOnePlainLine() {
    Called called =
        Called.with(
            "check",
            DEMO,
            "--field",
            "nd1x",
            "--date",
            "2031-06-08",
            "glyphosat-4.5sl 32 fl oz/acre",
            "crop-oil");

    assertThat(called.code()).isEqualTo(2);
    assertThat(called.out()).isEmpty();
    assertThat(called.err().lines()).hasSize(4).noneMatch(l -> l.contains("Exception"));
    assertThat(called.err())
        .contains("'nd1x' is no field of the book")
        .contains("2031-06-08 is not in the season 2027")
        .contains("did you mean 'glyphosate-4.5sl'?")
        .contains("'crop-oil' is no name with a rate");
  }

  @Test
  void aCallThatMeansNothingIsRefused() {
    assertThat(Called.with("check", DEMO).err()).contains("nothing to check");
    assertThat(Called.with("check", DEMO, "a", "b").err()).contains("one mix at a time");
    assertThat(Called.with("check", DEMO, "--program", "x", "y").err())
        .contains("judges a program alone");
    assertThat(Called.with("check", DEMO, "--field", "ND-1").err()).contains("no product");
    assertThat(Called.with("check", DEMO, "--date", "2027-06-08", "nd-1-june").err())
        .contains("belong to a tank typed here");
  }

  /** What the mix leaves out comes from the forecast, and the hours that are open are listed. */
  @Test
  void aForecastFillsTheDay() throws IOException {
    Path book = SmallBook.of(folder.resolve("book"), "ND-1");
    StringBuilder rows = new StringBuilder("time,temp_f,rh_pct,wind_mph,gust_mph,from,rain_in\n");
    for (int day = 8; day <= 11; day++) {
      for (int hour = 0; hour < 24; hour++) {
        // Windy on the first day; calm and dry on the second until rain at 15:00.
        double wind = day == 8 ? 18 : 6;
        double rain = day == 9 && hour >= 15 ? 0.3 : 0;
        rows.append(
            String.format(
                java.util.Locale.ROOT,
                "2027-06-%02dT%02d:00,74,55,%.0f,%.0f,W,%.1f%n",
                day,
                hour,
                wind,
                wind + 2,
                rain));
      }
    }
    Files.writeString(book.resolve("weather/sedge-fork-hourly.csv"), rows.toString());
    String[] tank = {
      "--json",
      "--field",
      "ND-1",
      "--date",
      "2027-06-08",
      "--volume",
      "15",
      "glufosinate-2.34sl 36 fl oz/acre",
      "ammonium-sulfate 8.5 lb/100 gal"
    };

    JsonNode root = JSON.readTree(Called.with("check", book, tank).out());

    assertThat(root.get("openHours")).isNotEmpty();
    assertThat(root.get("openHours"))
        .allSatisfy(
            s -> {
              assertThat(s.get("from").textValue()).isGreaterThan("2027-06-08T23");
              assertThat(s.get("to").textValue().substring(0, 10)).isNotEqualTo("2027-06-08");
            });
    // Before the rain of the ninth glufosinate needs its rain-free hours, and none is open in it.
    assertThat(root.get("openHours"))
        .noneSatisfy(s -> assertThat(s.get("to").textValue()).isEqualTo("2027-06-09T15:00"));
  }

  @Test
  void aMistakeOfTheForecastIsOnePlainLine() throws IOException {
    Path book = SmallBook.of(folder.resolve("wrong"), "ND-1");
    Files.writeString(
        book.resolve("weather/sedge-fork-hourly.csv"),
        "time,temp_f,wind_mph\n2027-06-08T10:00,74,6\n2027-06-08T10:00,75,6\nnoon,75,-3\n");

    Called called =
        Called.with(
            "check", book, "--field", "ND-1", "--date", "2027-06-08", "glyphosate 1 lb ae/acre");

    assertThat(called.code()).isEqualTo(2);
    assertThat(called.err())
        .contains("weather/sedge-fork-hourly.csv:3:1: line 2 has this hour already")
        .contains("weather/sedge-fork-hourly.csv:4:1: 'noon' is no hour of a day")
        .contains("weather/sedge-fork-hourly.csv:4:9: ");
  }

  /** A label that keeps a distance from water stops a program that was planned without it. */
  @Test
  void theImpactOfAChangedCatalog() throws IOException {
    Path catalog = Files.createDirectories(folder.resolve("catalog/ingredients"));
    Path starter =
        ProgramProcess.CLI.resolve(
            "../catalog/src/main/resources/org/swathbook/catalog/starter/ingredients/metribuzin.yaml");
    String text = Files.readString(starter);
    String changed = text.replaceAll("(?m)^setback: .*$", "setback: {lake: 2000 ft}");
    assertThat(changed).isNotEqualTo(text);
    Files.writeString(catalog.resolve("metribuzin.yaml"), changed);

    Called called =
        Called.with(
            "catalog",
            "impact",
            "starter",
            folder.resolve("catalog").toString(),
            "--book",
            DEMO.toString(),
            "--today",
            "2027-03-01");
    assertThat(called.err()).isEmpty();
    assertThat(called.code()).isEqualTo(ExitCode.DONE);
    assertThat(called.out()).contains("ND-1").contains("setback-water: silent -> block");

    Called same =
        Called.with(
            "catalog",
            "impact",
            "starter",
            "starter",
            "--book",
            DEMO.toString(),
            "--json",
            "--today",
            "2027-03-01");
    assertThat(JSON.readTree(same.out()).get("hits")).isEmpty();
  }
}
