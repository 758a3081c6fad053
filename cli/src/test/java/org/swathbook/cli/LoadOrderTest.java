package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.terminal.ExitCode;

/** {@code load} with several mixes, on the demo book. */
class LoadOrderTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path DEMO = ProgramProcess.CLI.resolve("../demo-data");

  @TempDir Path folder;

  private String mix(String name, String field, String product, String more) throws IOException {
    Path file = folder.resolve(name + ".yaml");
    Files.writeString(
        file,
        "format: swathbook.mix/1\nfield: "
            + field
            + "\ndate: 2027-06-08\nproducts: [{"
            + product
            + "}]\n"
            + more);
    return file.toString();
  }

  private String corn() throws IOException {
    return mix("corn", "ND-2", "ingredient: mesotrione, rate: 0.094 lb ai/acre", "");
  }

  private String soybean(String more) throws IOException {
    return mix("soybean", "ND-4", "ingredient: bentazon, rate: 0.75 lb ai/acre", more);
  }

  private static final String EMPTY = "sprayer: {tank: 800 gal, lastLoad: []}\n";

  /**
   * Traces of mesotrione injure soybean (the label's clean-out; from memory), so soybean goes first
   * though it was named last.
   */
  @Test
  void whatIsInjuredGoesFirst() throws IOException {
    Called called = Called.with("load", DEMO, corn(), soybean(EMPTY), "--json");

    assertThat(called.err()).isEmpty();
    assertThat(called.code()).isEqualTo(ExitCode.DONE);
    JsonNode root = JSON.readTree(called.out());
    assertThat(names(root)).containsExactly("soybean", "corn");
    assertThat(root.get("heldKnown").booleanValue()).isTrue();
  }

  private static List<String> names(JsonNode root) {
    List<String> out = new ArrayList<>();
    root.get("order").forEach(l -> out.add(l.get("mix").textValue()));
    return out;
  }

  /**
   * The recipe of the README. Soybean without the trait goes before 2,4-D, and corn last, since
   * mesotrione injures both (clean-outs of the catalog; from memory).
   */
  @Test
  void theLoadsOfADayInTheDemoBook() throws IOException {
    Called called = Called.with("load", DEMO, "nd-2-june", "nd-1-june", "nd-4-june", "--json");
    assertThat(called.err()).isEmpty();
    assertThat(names(JSON.readTree(called.out())))
        .containsExactly("nd-4-june", "nd-1-june", "nd-2-june");
    for (String mix : List.of("nd-2-june", "nd-4-june")) {
      Called sheet = Called.with("load", DEMO, mix);
      assertThat(sheet.code()).isEqualTo(ExitCode.DONE);
      assertThat(sheet.out()).contains("All loads together");
    }
  }

  /** What the sprayer held comes into it; the rinse stands before the crop that needs it. */
  @Test
  void whatTheSprayerHeldIsCleanedOutWhereItMatters() throws IOException {
    String held = "sprayer: {tank: 800 gal, lastLoad: [mesotrione], cleaned: water-rinse}\n";
    Called called = Called.with("load", DEMO, soybean(held), corn());

    assertThat(called.err()).isEmpty();
    assertThat(called.out().lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
    String out = called.out().replaceAll("\\s+", " ");
    assertThat(out)
        .contains("CLEAN OUT by a triple rinse")
        .contains("mesotrione: traces injure soybean")
        .contains("The label is the law.")
        .contains("A mix that is not marked as blocked has its own verdict")
        .doesNotContain("BLOCKED");
    assertThat(Called.with("load", DEMO, soybean(""), corn()).out())
        .contains("What the sprayer held before is NOT KNOWN");
  }

  /**
   * Four times a label's rate of bentazon stands in the order, marked, and the call says so too; as
   * the same mix does alone.
   */
  @Test
  void aBlockedMixIsMarked() throws IOException {
    String much =
        mix(
            "much",
            "ND-4",
            "ingredient: bentazon, rate: 4 lb ai/acre",
            EMPTY + "carrier: {volume: 20 gal/acre}\n");
    assertThat(Called.with("load", DEMO, much).code()).isEqualTo(ExitCode.BLOCKED);

    Called text = Called.with("load", DEMO, corn(), much);
    assertThat(text.code()).as(text.err()).isEqualTo(ExitCode.BLOCKED);
    assertThat(text.out().replaceAll("\\s+", " "))
        .containsPattern(
            "1 much: ND-4[^:]* BLOCKED by [a-z, -]*rate-above-use[a-z, -]*: it gets no load;")
        .doesNotContainPattern("2 corn: ND-2[^:]* BLOCKED");
    Called json = Called.with("load", DEMO, corn(), much, "--json");
    assertThat(json.code()).isEqualTo(ExitCode.BLOCKED);
    JsonNode order = JSON.readTree(json.out()).get("order");
    assertThat(order.get(0).get("blockedBy"))
        .extracting(JsonNode::textValue)
        .contains("rate-above-use");
    assertThat(order.get(1).get("blockedBy")).isEmpty();
  }

  @Test
  void everyMistakeIsOnePlainLine() throws IOException {
    String other =
        mix(
            "other",
            "ND-3",
            "ingredient: mesotrione, rate: 0.094 lb ai/acre",
            "sprayer: {lastLoad: [atrazine], cleaned: triple-rinse}\n");
    Called two = Called.with("load", DEMO, soybean(EMPTY), other);
    assertThat(two.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(two.err()).contains("do not agree on what the sprayer held");

    Path day = Path.of(corn());
    Files.writeString(day, Files.readString(day).replace("06-08", "06-09"));
    Called days = Called.with("load", DEMO, soybean(EMPTY), day.toString());
    assertThat(days.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(days.err()).contains("name mixes of one day");

    String[] nine = new String[9];
    java.util.Arrays.fill(nine, soybean(EMPTY));
    assertThat(Called.with("load", DEMO, nine).err()).contains("9 mixes are too many");
  }
}
