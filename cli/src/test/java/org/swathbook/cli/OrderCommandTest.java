package org.swathbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.terminal.ExitCode;

/** Whole calls of {@code order}. */
class OrderCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String LAYERS = "nd-1-two-layers";

  @TempDir static Path dir;
  private static Path book;

  @BeforeAll
  static void makeTheBook() throws IOException {
    book = SmallBook.of(dir.resolve("book"), "ND-1", "ND-2");
    SmallBook.copyProgram(book, LAYERS + ".yaml");
    Files.writeString(
        book.resolve("stock.csv"),
        """
        product,amount,grower,goodUntil
        flumioxazin-51wg,1 lb,Ninebark Draw Farms,
        s-metolachlor-7.62ec,5 gal,Ninebark Draw Farms,2027-06-05
        """);
    // The warehouse is empty, so that something is to be bought.
    Path prices = book.resolve("prices.csv");
    Files.writeString(
        prices,
        Files.readString(prices)
            .replaceAll("(?m),[^,\n]*$", ",")
            .replaceFirst("product,price,package,", "product,price,package,onHand")
            .replaceAll("(?m)^metribuzin-75wg,.*\n", ""));
  }

  private static JsonNode json(String... more) throws IOException {
    String[] args = new String[more.length + 1];
    System.arraycopy(more, 0, args, 0, more.length);
    args[more.length] = "--json";
    Called called = Called.with("order", book, args);
    assertThat(called.code()).as(called.err()).isZero();
    return JSON.readTree(called.out());
  }

  private static JsonNode line(JsonNode lines, String product) {
    for (JsonNode l : lines) {
      if (l.get("product").asText().equals(product)) {
        return l;
      }
    }
    throw new AssertionError("no line of " + product);
  }

  /** By hand: 32 fl oz on 76 acres are 19 gal; 0.08 lb ai/acre of a 51 % product are 11.92 lb. */
  @Test
  void theOnlyProgramOfAFieldIsBoughtFor() throws IOException {
    JsonNode root = json();
    assertThat(root.get("fields").findValuesAsText("program"))
        .containsExactly("programs/nd-1-two-layers.yaml");
    assertThat(root.get("leftOut").get(0).get("fields").get(0).asText()).isEqualTo("ND-2");
    JsonNode glyphosate = line(root.get("lines"), "glyphosate-4.5sl");
    assertThat(glyphosate.get("needed").asDouble()).isEqualTo(19.0);
    assertThat(glyphosate.get("packages").asInt()).isEqualTo(8);
    assertThat(glyphosate.get("leftOver").asDouble()).isEqualTo(1.0);
    assertThat(glyphosate.get("cost").asDouble()).isEqualTo(8 * 2.5 * 18);
    JsonNode flumioxazin = line(root.get("lines"), "flumioxazin-51wg");
    assertThat(flumioxazin.get("needed").asDouble()).isEqualTo(11.922);
    assertThat(flumioxazin.get("onHand").asDouble()).isEqualTo(1.0);
    assertThat(flumioxazin.get("packages").asInt()).isEqualTo(3);
    JsonNode metribuzin = line(root.get("lines"), "metribuzin-75wg");
    assertThat(metribuzin.get("cost").isNull()).isTrue();
    assertThat(metribuzin.get("packages").isNull()).isTrue();
    assertThat(root.get("totals").get(0).get("unpriced").get(0).asText())
        .isEqualTo("metribuzin-75wg");
    assertThat(root.get("tooOld").get(0).get("product").asText()).isEqualTo("s-metolachlor-7.62ec");
    assertThat(line(root.get("lines"), "s-metolachlor-7.62ec").get("onHand").asDouble()).isZero();
    // 8.5 lb in 100 gal, 15 gal on each of 76 acres.
    assertThat(root.get("adjuvants").get(0).get("needed").asDouble()).isEqualTo(96.9);
  }

  @Test
  void theTextSaysWhatIsMissing() {
    String out = Called.with("order", book).out();
    assertThat(out)
        .contains("NO PRICE, not in the sum: metribuzin-75wg (prices.csv)")
        .contains("ND-2: no program in the book")
        .contains("On hand, but too old for a pass that needs it")
        .contains("The label is the law.");
    assertThat(out.lines()).allMatch(l -> l.length() <= 100);
  }

  /** Atrazine is for certified applicators: the dealer has to see the certificate. */
  @Test
  void whatIsForCertifiedApplicatorsIsNamed(@TempDir Path other) throws IOException {
    Path own = other.resolve("book");
    SmallBook.of(own, "ND-2");
    Files.createDirectories(own.resolve("programs"));
    Files.writeString(
        own.resolve("programs/corn.yaml"),
        """
        format: swathbook.program/1
        name: Corn
        field: ND-2
        passes:
          - at: planting
            carrier: {volume: 15 gal/acre}
            mix:
              - {product: atrazine-4sc, rate: 2 pt/acre}
              - {product: s-metolachlor-7.62ec, rate: 1.3 pt/acre}
        """);
    assertThat(Called.with("order", own).out())
        .contains("Restricted use\n  atrazine-4sc: only a certified applicator may buy");
    Path table = other.resolve("order.csv");
    assertThat(Called.with("order", own, "--csv", table.toString()).code()).isZero();
    assertThat(Files.readString(table))
        .containsPattern("atrazine-4sc,[^\n]*restricted use")
        .doesNotContainPattern("s-metolachlor-7.62ec,[^\n]*restricted use");
  }

  @Test
  void theDemoBook() {
    Goldens.check(
        "demo/order.txt", Called.with("order", ProgramProcess.CLI.resolve("../demo-data")).out());
  }

  @Test
  void aPassThatTheJournalHasNeedsNothing(@TempDir Path made) throws IOException {
    Path own = made.resolve("book");
    SmallBook.of(own, "ND-1");
    SmallBook.copyProgram(own, LAYERS + ".yaml");
    SmallBook.append(
        own,
        "applications.csv",
        "T-1,1,,2027-05-12,08:00,ND-1,2027,76.0,metribuzin-75wg,DEMO-1,8.11,oz weight/acre,M-1,"
            + "soybean,pre,AMAPA,Applicator One,DEMO-4101,5,NW,75,");
    Called called =
        Called.with("order", "--json", "--book", own.toString(), "--today", "2027-05-20");
    JsonNode lines = JSON.readTree(called.out()).get("lines");
    assertThat(lines.findValuesAsText("product"))
        .contains("glyphosate-4.5sl")
        .doesNotContain("metribuzin-75wg", "flumioxazin-51wg");
  }

  @Test
  void severalProgramsOfAFieldAreAskedAbout(@TempDir Path other) throws IOException {
    Path own = other.resolve("book");
    SmallBook.of(own, "ND-1");
    SmallBook.copyProgram(own, LAYERS + ".yaml");
    Path programs = own.resolve("programs");
    Files.copy(programs.resolve(LAYERS + ".yaml"), programs.resolve("second.yaml"));
    assertThat(Called.with("order", own).out())
        .contains("Nothing is ordered")
        .contains("several programs");
    assertThat(Called.with("order", own, "--program", "second").out())
        .contains("programs/second.yaml");
    // Under the field's own name it is the plan, whatever else there is.
    Files.copy(programs.resolve(LAYERS + ".yaml"), programs.resolve("nd-1.yaml"));
    assertThat(Called.with("order", own).out()).contains("programs/nd-1.yaml");
    Called twice = Called.with("order", own, "--program", "second", "--program", LAYERS);
    assertThat(twice.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(twice.err()).contains("second program named for ND-1");
  }

  /** What {@code plan} recommends with the same effort is what is bought. */
  @Test
  void aFieldWithoutAProgramIsPlannedWhereThatIsAsked() throws IOException {
    JsonNode bought = json("ND-2", "--plan", "--effort", "quick");
    assertThat(bought.get("leftOut")).isEmpty();
    assertThat(bought.get("fields").findValuesAsText("program")).containsExactly("planned anew");
    JsonNode plan =
        JSON.readTree(Called.with("plan", book, "ND-2", "--effort", "quick", "--json").out());
    JsonNode passes = plan.get("fields").get(0).get("programs").get(0).get("passes");
    Set<String> planned = new TreeSet<>();
    passes.forEach(p -> planned.addAll(p.get("mix").findValuesAsText("product")));
    assertThat(planned).isNotEmpty();
    assertThat(bought.get("lines").findValuesAsText("product")).containsAll(planned);
    Called alone = Called.with("order", book, "ND-2", "--effort", "quick");
    assertThat(alone.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(alone.err()).contains("--effort means nothing without --plan");
  }

  /** Every substitute is legal in that program, and none is the product itself. */
  @Test
  void substitutesAreJudgedInTheProgram() throws IOException {
    JsonNode all = json("--substitutes").get("substitutes");
    assertThat(all).hasSize(6);
    int named = 0;
    for (JsonNode s : all) {
      for (JsonNode i : s.get("instead")) {
        named++;
        assertThat(i.get("product")).isNotEqualTo(s.get("product"));
        assertThat(i.get("verdict").asText()).isNotEqualTo("blocked");
        assertThat(i.get("controlPct").has("AMAPA")).isTrue();
      }
    }
    assertThat(named).isPositive();
    assertThat(json().has("substitutes")).isFalse();
  }

  /**
   * What takes a product's place does its work: another grass herbicide for glyphosate on foxtail
   * where Palmer amaranth resists it (clethodim not, since 2,4-D choline in that tank refuses the
   * oil that it asks for), another site 15 for S-metolachlor, and nothing of sites 1 or 2 for 2,4-D
   * on Palmer amaranth that resists site 2 (common practice, no source).
   */
  @Test
  void aSubstituteDoesTheWorkOfWhatItStandsFor() throws IOException {
    JsonNode all = json("--substitutes").get("substitutes");
    assertThat(insteadOf(all, "glyphosate-4.5sl"))
        .contains("quizalofop-0.88ec")
        .doesNotContain("clethodim-2ec");
    assertThat(insteadOf(all, "s-metolachlor-7.62ec")).contains("acetochlor-3cs");
    assertThat(insteadOf(all, "2-4-d-choline-3.8sl"))
        .doesNotContain("chlorimuron-ethyl-25wg", "imazethapyr-2sl", "quizalofop-0.88ec");
  }

  private static List<String> insteadOf(JsonNode all, String product) {
    List<String> out = new ArrayList<>();
    for (JsonNode s : all) {
      if (s.get("product").asText().equals(product)) {
        s.get("instead").forEach(i -> out.add(i.get("product").asText()));
      }
    }
    return out;
  }

  @Test
  void tablesOpenCleanInASpreadsheet(@TempDir Path files) throws IOException {
    Path csv = files.resolve("order.csv");
    Path xlsx = files.resolve("order.xlsx");
    Called called = Called.with("order", book, "--csv", csv.toString(), "--xlsx", xlsx.toString());
    assertThat(called.code()).as(called.err()).isZero();
    assertThat(called.out()).contains("Written: " + csv).contains("The label is the law.");
    List<String> lines = Files.readAllLines(csv);
    int columns = lines.get(0).split(",", -1).length;
    assertThat(lines).allMatch(l -> l.split(",", -1).length == columns);
    assertThat(lines.get(0)).startsWith("buyer,kind,product,needed,onHand,toBuy,amountUnit,");
    assertThat(lines)
        .anyMatch(
            l -> l.startsWith("all together,product,glyphosate-4.5sl,19.000,0.000,19.000,gal,8"));
    byte[] first = Files.readAllBytes(xlsx);
    try (ZipFile zip = new ZipFile(xlsx.toFile())) {
      assertThat(Collections.list(zip.entries()).stream().map(e -> e.getName()))
          .contains("xl/workbook.xml", "xl/worksheets/sheet1.xml", "xl/worksheets/sheet2.xml");
      String sheet =
          new String(
              zip.getInputStream(zip.getEntry("xl/worksheets/sheet1.xml")).readAllBytes(), UTF_8);
      assertThat(sheet).doesNotContain("<f>").contains("t=\"n\"><v>19.000</v>");
    }
    assertThat(Called.with("order", book, "--xlsx", xlsx.toString()).code())
        .isEqualTo(ExitCode.WRONG_INPUT);
    Called.with("order", book, "--xlsx", xlsx.toString(), "--force");
    assertThat(Files.readAllBytes(xlsx)).isEqualTo(first);
  }

  @Test
  void callsThatMakeNoSenseAreRefused() {
    assertThat(Called.with("order", book, "--json", "--csv", "x.csv").code()).isEqualTo(2);
    assertThat(Called.with("order", book, "--force").code()).isEqualTo(2);
    assertThat(Called.with("order", book, "ND-9").err()).contains("there is no field 'ND-9'");
    assertThat(Called.with("order", book, "ND-2", "--program", LAYERS).err())
        .contains("it is for ND-1, which was not asked for");
  }
}
