package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.terminal.ExitCode;

/**
 * {@code audit}, and with {@code --ledger} on a copy of the demo book into which passes are
 * recorded.
 */
class AuditCommandTest {
  /** Half of the last digit that a ledger prints. */
  private static final BigDecimal HALF_STEP = new BigDecimal("0.0005");

  @TempDir Path folder;
  private Path book = Path.of("");

  @BeforeEach
  void copy() throws IOException {
    book = DemoBookCopy.into(folder);
  }

  private void record(String... more) {
    List<String> args = new ArrayList<>(List.of("record"));
    args.addAll(List.of(more));
    args.addAll(List.of("--book", book.toString(), "--today", "2027-06-30"));
    assertThat(Called.with(args.toArray(String[]::new)).complaints()).isEmpty();
  }

  private List<JsonNode> ledger(String field, String ingredient) throws IOException {
    Called called =
        Called.with(
            "audit",
            field,
            "--ledger",
            "--json",
            "--book",
            book.toString(),
            "--today",
            "2027-06-30");
    assertThat(called.code()).as(called.err()).isZero();
    JsonNode lines = new ObjectMapper().readTree(called.out()).get("ledger");
    return StreamSupport.stream(lines.spliterator(), false)
        .filter(l -> l.get("ingredient").textValue().equals(ingredient))
        .toList();
  }

  /**
   * Two halves of a field on two days are one application. Of 2.5 lb ai/acre of atrazine in a
   * calendar year of corn, 1.0 + 1.0 are used, and 0.5 are left: rows count as if they had met the
   * same ground.
   */
  @Test
  void twoHalvesAreOneApplicationAndOneSum() throws IOException {
    record("--field", "ND-2", "--date", "2027-05-20", "--acres", "59", "atrazine 1.0 lb ai/acre");
    record("--field", "ND-2", "--date", "2027-05-21", "--acres", "59", "atrazine 1.0 lb ai/acre");
    JsonNode line = ledger("ND-2", "atrazine").get(0);
    assertThat(line.get("used").decimalValue()).isEqualByComparingTo("2.0");
    assertThat(line.get("cap").decimalValue()).isEqualByComparingTo("2.5");
    assertThat(line.get("left").decimalValue()).isEqualByComparingTo("0.5");
    assertThat(line.get("basis").textValue()).isEqualTo("ai");
    assertThat(line.get("applications").intValue()).isEqualTo(1);
  }

  /** 32 fl oz of 4.5 lb ae/gal are 32/128 · 4.5 = 1.125 lb ae/acre; mended to 16: 0.5625. */
  @Test
  void aCorrectedRowCountsAsItNowStandsAndAVoidedOneNotAtAll() throws IOException {
    record("--field", "ND-1", "--date", "2027-06-08", "glyphosate-4.5sl 32 fl oz/acre");
    assertThat(ledger("ND-1", "glyphosate").get(0).get("used").decimalValue())
        .isEqualByComparingTo("1.125");
    record("--corrects", "A-27-001/1", "glyphosate-4.5sl 16 fl oz/acre");
    assertThat(ledger("ND-1", "glyphosate").get(0).get("used").decimalValue())
        .isEqualByComparingTo("0.5625");
    record("--corrects", "A-27-001/2", "--void");
    assertThat(
            ledger("ND-1", "glyphosate").stream()
                .filter(l -> l.get("per").asText().equals("season"))
                .filter(l -> l.get("used").doubleValue() > 0))
        .isEmpty();
  }

  /**
   * All forms of 2,4-D count together, as acid: 2 pt of 3.8 lb ae/gal choline are 2/8 · 3.8 = 0.95,
   * and 0.5 lb ae of the ester before planting come to it.
   */
  @Test
  void formsOfOneAcidShareACap() throws IOException {
    record("--field", "ND-1", "--date", "2027-04-20", "2,4-D ester 0.5 lb ae/acre");
    record("--field", "ND-1", "--date", "2027-06-08", "2-4-d-choline-3.8sl 2 pt/acre");
    assertThat(ledger("ND-1", "2,4-D choline"))
        .anySatisfy(
            line -> {
              assertThat(line.get("counts").textValue()).isEqualTo("2,4-D");
              assertThat(line.get("basis").textValue()).isEqualTo("ae");
              assertThat(line.get("used").decimalValue()).isEqualByComparingTo("1.45");
            });
  }

  private BigDecimal used(String field, String ingredient) throws IOException {
    return ledger(field, ingredient).get(0).get("used").decimalValue();
  }

  /**
   * A premix counts for each of its actives against that active's own cap, with what is poured
   * besides. 2.5 qt of 1.7 + 0.25 + 1 lb/gal are 0.625 gal: 1.0625 lb S-metolachlor, 0.15625 lb
   * mesotrione and 0.625 lb atrazine; a quart of atrazine at 4 lb/gal is one pound more. Of 2.5 lb
   * of atrazine a year (Cornell University, as the catalog cites it) 2.5 - 1.625 are left.
   */
  @Test
  void aPremixCountsForEachOfItsActives() throws IOException {
    record(
        "--field",
        "ND-2",
        "--date",
        "2027-05-20",
        "s-metolachlor-mesotrione-atrazine-2.95se 2.5 qt/acre",
        "atrazine-4sc 1 qt/acre");
    assertThat(used("ND-2", "S-metolachlor")).isEqualByComparingTo("1.0625");
    assertThat(used("ND-2", "mesotrione")).isCloseTo(new BigDecimal("0.15625"), within(HALF_STEP));
    assertThat(used("ND-2", "atrazine")).isEqualByComparingTo("1.625");
    assertThat(ledger("ND-2", "atrazine").get(0).get("left").decimalValue())
        .isEqualByComparingTo("0.875");
  }

  /**
   * Caps of 2,4-D count acid. The choline salt is 221.03/324.20 acid by its molar masses, so 0.95
   * lb ae are 1.393 lb of salt; the amine salt 221.03/266.12, so 0.475 lb ae are 0.572 lb. What
   * counts is 0.95 + 0.475 = 1.425 and not 1.965, whichever salt was in the jug.
   */
  @Test
  void saltsCountByTheirAcid() throws IOException {
    record("--field", "ND-1", "--date", "2027-04-20", "2-4-d-amine-3.8sl 1 pt/acre");
    record("--field", "ND-1", "--date", "2027-06-08", "2-4-d-choline-3.8sl 2 pt/acre");
    double acid = used("ND-1", "2,4-D choline").doubleValue();
    assertThat(acid).isEqualTo(1.425);
    double salt = 0.95 / (221.03 / 324.20) + 0.475 / (221.03 / 266.12);
    assertThat(salt).isCloseTo(1.965, within(0.001));
  }

  /** 1.6 + 0.9 are 2.5, all that atrazine has in a year: legal, and nothing left. */
  @Test
  void aSumAtTheCapLeavesNothingAndIsNoOveruse() throws IOException {
    record("--field", "ND-2", "--date", "2027-04-20", "atrazine 1.6 lb ai/acre");
    record("--field", "ND-2", "--date", "2027-05-20", "atrazine 0.9 lb ai/acre");
    JsonNode line = ledger("ND-2", "atrazine").get(0);
    assertThat(line.get("left").decimalValue()).isEqualByComparingTo("0");
    assertThat(Called.with("audit", book, "ND-2").out()).doesNotContain("annual-cap: Atrazine");
  }

  /**
   * A field of 118 acres sprayed by thirds on three days is one application; a third that never was
   * sprayed, voided, leaves one of two days and its sum.
   */
  @Test
  void aFieldInThreePartsWithOneVoided() throws IOException {
    for (String day : List.of("2027-05-20", "2027-05-21", "2027-05-22")) {
      record("--field", "ND-2", "--date", day, "--acres", "39.3", "mesotrione 0.05 lb ai/acre");
    }
    assertThat(used("ND-2", "mesotrione")).isEqualByComparingTo("0.15");
    record("--corrects", "A-27-003/1", "--void");
    JsonNode line = ledger("ND-2", "mesotrione").get(0);
    assertThat(line.get("used").decimalValue()).isEqualByComparingTo("0.1");
    assertThat(line.get("applications").intValue()).isEqualTo(1);
  }

  @Test
  void theLedgerOfAllFieldsFitsThePage() {
    record("nd-1-june");
    Called called =
        Called.with("audit", "--ledger", "--book", book.toString(), "--today", "2027-06-09");
    assertThat(called.code()).as(called.err()).isZero();
    assertThat(called.code()).isEqualTo(ExitCode.DONE);
    assertThat(called.out().lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
    assertThat(called.out())
        .contains("no entry before 11 Jun 2027")
        .contains("The label is the law.");
    assertThat(Called.with("audit", book, "XX-1", "--ledger").err())
        .contains("FIELD:1:1: 'XX-1' is no field of the book");
  }

  @Test
  void theSitesOfTheDemoBook() {
    Called text = Called.with("audit", book);
    assertThat(text.code()).as(text.err()).isZero();
    assertThat(text.code()).isEqualTo(ExitCode.DONE);
    assertThat(text.out().lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
    Goldens.check("demo/audit.txt", text.out());
    Goldens.check("demo/audit.json", Called.with("audit", book, "--json").out());
  }

  @Test
  void threeChangesOfTheDemoBookAreCompared() {
    String[] changes = {
      "--what-if", "second-foliar-site",
      "--what-if", "overlapping-residual:Palmer amaranth",
      "--what-if", "posts-by:V3"
    };
    Called text = Called.with("audit", book, changes);
    assertThat(text.code()).as(text.err()).isZero();
    assertThat(text.code()).isEqualTo(ExitCode.DONE);
    assertThat(text.out().lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
    Goldens.check("demo/audit-what-if.txt", text.out());
  }

  /** All that is wrong with the changes is said at once, and nothing is walked. */
  @Test
  void aChangeThatCannotBeTriedIsAMistake() {
    Called called =
        Called.with(
            "audit",
            book,
            "--what-if",
            "more-of-everything",
            "--what-if",
            "overlapping-residual:dandelionish",
            "--what-if",
            "posts-by:V77",
            "--what-if",
            "posts-by",
            "--ledger");
    assertThat(called.code()).isEqualTo(2);
    assertThat(called.out()).isEmpty();
    assertThat(called.err())
        .contains("'more-of-everything' is no change that can be tried; write second-foliar-site")
        .contains("'dandelionish' is no weed of the catalog")
        .contains("'V77' is no stage of a crop")
        .contains("'posts-by' is no change that can be tried")
        .contains("--what-if and --ledger are two reports");
  }

  @Test
  void aProgramIsHeldAgainstTheJournal() throws IOException {
    Files.writeString(
        book.resolve("programs/nd-1-corn.yaml"),
        """
        format: swathbook.program/1
        name: Corn, as agreed in winter
        field: ND-1
        passes:
          - at: 2026-05-02
            mix:
              - {ingredient: acetochlor, rate: 1.9 lb ai/acre}
              - {ingredient: atrazine, rate: 1.0 lb ai/acre}
              - {ingredient: mesotrione, rate: 0.18 lb ai/acre}
          - at: stage V3
            mix:
              - {ingredient: glyphosate, rate: 1.13 lb ae/acre}
              - {ingredient: glufosinate-ammonium, rate: 0.4 lb ai/acre}
              - {ingredient: dicamba, rate: 0.25 lb ae/acre}
          - at: 75 days after planting
            mix:
              - {ingredient: dimethenamid-P, rate: 0.56 lb ai/acre}
        """);
    Called text = Called.with("audit", book, "--planned", "nd-1-corn");
    assertThat(text.code()).as(text.err()).isZero();
    assertThat(text.code()).isEqualTo(ExitCode.DONE);
    assertThat(text.out().lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
    Goldens.check("demo/audit-planned.txt", text.out());
    // A date of 2026 is none of the season 2025.
    assertThat(Called.with("audit", book, "--planned", "nd-1-corn", "--season", "2025").err())
        .contains("nd-1-corn.yaml:5:9: '2026-05-02' is not in the season 2025");
    assertThat(Called.with("audit", book, "--planned", "nd-1-corn", "--season", "1999").err())
        .contains("--season:1:1: seasons.csv has no row of 1999");
    assertThat(Called.with("audit", book, "--season", "2026", "--ledger").err())
        .contains("--season:1:1: a season belongs to a program")
        .contains("--planned:1:1: a program has its own field");
  }

  /** What the years before never bring is told; a weed that is none of the field is a mistake. */
  @Test
  void aPlannedPassWhoseTimeNeverComesIsTold() throws IOException {
    Path program = book.resolve("programs/tall.yaml");
    Files.createDirectories(program.getParent());
    String tall =
        """
        format: swathbook.program/1
        name: tall
        field: ND-1
        passes:
          - at: when AMAPA is 400 in
            mix: [{ingredient: glyphosate, rate: 1.13 lb ae/acre}]
        """;
    Files.writeString(program, tall);
    Called called = Called.with("audit", book, "--planned", "tall", "--season", "2026");
    assertThat(called.code()).as(called.err()).isEqualTo(ExitCode.DONE);
    assertThat(called.out().replaceAll("\\s+", " "))
        .contains("'when AMAPA is 400 in' never came due in the weather of that season")
        .contains(
            "What was promised cannot be walked: in most weather years known by then 'when AMAPA is"
                + " 400 in' does not come.");

    Files.writeString(program, tall.replace("AMAPA", "KCHSC"));
    Called other = Called.with("audit", book, "--planned", "tall", "--season", "2026");
    assertThat(other.code()).as(other.err()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(other.err()).startsWith("programs/tall.yaml:5:9: KCHSC is no weed of field ND-1; ");
  }

  /** The mistakes that the demo journal holds on purpose, as its notes tell them. */
  @Test
  void theMistakesOfTheDemoJournalAreFound() {
    String out = Called.with("audit", book).out().replaceAll("\\s+", " ");
    assertThat(out)
        .contains("A-26-018 rate-above-use")
        .contains("a tenth of it, 1.13 lb ae/acre, would be a rate of that use: check the decimal")
        // 14 mph from the southwest, 93 F, a vineyard to the northeast that called in July.
        .contains("A-25-026 wind: Wind of 14 mph")
        .contains("A-25-026 sensitive-neighbor: The wind blows toward the neighbor 'vineyard'")
        .contains("A-26-019 sensitive-neighbor: The wind blows toward the neighbor 'garden'")
        // 9 mph is within dicamba's limit, where 11 and 14 are not.
        .doesNotContain("A-26-016 wind")
        .contains("A-26-013 annual-cap: Mesotrione")
        .contains("A-25-004 next-crop-interval: Trifluralin")
        .contains("A-25-008 stage-window: Flumioxazin")
        .contains("A-25-009 soil-limit: Metribuzin")
        .contains("A-25-025 stage-window: Dicamba")
        // Corn of 34.5 in: half a pound ends at 8 in, the quarter pound of taller corn is exceeded.
        .contains("A-26-019 rate-above-use: Dicamba")
        .contains("A-26-020 antagonism: Quizalofop-P-ethyl")
        .contains("A-26-029 harvest-interval: Clethodim");
    assertThat(Called.with("audit", book, "XX-1").err())
        .contains("FIELD:1:1: 'XX-1' is no field of the book");
  }

  /**
   * A resistance has no year in weeds.csv, and whoever reads of an earlier season is to know it.
   */
  @Test
  void todaysResistanceStrikesSitesOfAllSeasonsAndTheReportSaysSo() throws IOException {
    Path page = folder.resolve("audit.html");
    assertThat(Called.with("audit", book, "OB-4", "--html", page.toString()).code()).isZero();
    for (String report :
        List.of(Called.with("audit", book, "OB-4").out(), Files.readString(page))) {
      assertThat(report.replaceAll("\\s+", " "))
          .contains(
              "weeds.csv writes no year to a resistance: what is listed today counts for all seasons");
    }
    JsonNode seasons =
        new ObjectMapper()
            .readTree(Called.with("audit", book, "OB-4", "--json").out())
            .get("fields");
    assertThat(seasons).hasSizeGreaterThan(1);
    for (JsonNode season : seasons) {
      // Glyphosate each year; weeds.csv lists site 9 on this field's Palmer amaranth.
      assertThat(numbers(season.get("sitesApplied"))).contains(9);
      assertThat(numbers(season.get("effectiveSites"))).doesNotContain(9);
    }
  }

  private static List<Integer> numbers(JsonNode sites) {
    return StreamSupport.stream(sites.spliterator(), false).map(JsonNode::intValue).toList();
  }
}
