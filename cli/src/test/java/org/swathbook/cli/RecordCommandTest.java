package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.terminal.ExitCode;

/** {@code record} on a copy of the demo book. */
class RecordCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;
  private Path book = Path.of("");

  @BeforeEach
  void copy() throws IOException {
    book = DemoBookCopy.into(folder);
  }

  private Called record(String... more) {
    return recordOn("2027-06-10", more);
  }

  private Called recordOn(String today, String... more) {
    List<String> args = new ArrayList<>(List.of("record"));
    args.addAll(List.of(more));
    args.addAll(List.of("--book", book.toString(), "--today", today));
    return Called.with(args.toArray(String[]::new));
  }

  @Test
  void aMixGoesInAndIsPrintedAsKept() throws IOException {
    List<String> before = DemoBookCopy.journal(book);
    Called called =
        record("nd-1-june", "--end", "13:10", "--applicator", "Applicator One", "--cert", "D-41");

    assertThat(called.err()).isEmpty();
    assertThat(called.code()).isEqualTo(ExitCode.DONE);
    assertThat(called.out().lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
    Goldens.check("demo/record.txt", called.out());
    List<String> after = DemoBookCopy.journal(book);
    assertThat(after).hasSize(before.size() + 3);
    assertThat(after.get(0)).isEqualTo(before.get(0) + ",endTime");
    assertThat(after.get(1)).isEqualTo(before.get(1) + ",");
    assertThat(after.get(before.size()))
        .isEqualTo(
            "A-27-001,1,,2027-06-08,10:30,ND-1,2027,76,2-4-d-choline-3.8sl,,2,pt/acre,nd-1-june,"
                + "soybean,V3,AMAPA; SETFA,Applicator One,D-41,7,W,78,"
                + "\"in 15 gal/acre, with ammonium-sulfate 8.5 lb/100 gal\",13:10");
  }

  @Test
  void theSameAgainIsRefusedUnlessItIsMeant() throws IOException {
    assertThat(record("nd-1-june").code()).isEqualTo(ExitCode.DONE);
    List<String> once = DemoBookCopy.journal(book);
    Called twice = record("nd-1-june");
    assertThat(twice.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(twice.out()).isEmpty();
    assertThat(twice.err().lines()).hasSize(3);
    assertThat(twice.err()).contains("is in the journal already, as A-27-001/1");
    assertThat(DemoBookCopy.journal(book)).isEqualTo(once);
    assertThat(record("nd-1-june", "--again").out()).contains("A-27-002, 3 lines");
    // The other half of the field is another pass.
    assertThat(record("nd-1-june", "--acres", "30", "--id", "W-17").out())
        .contains("W-17, 3 lines");
    assertThat(record("nd-1-june", "--acres", "20", "--id", "W-17").err())
        .contains("--id:1:1: the journal has a pass 'W-17' already");
  }

  @Test
  void aPassOfAProgram() throws IOException {
    Called called =
        record("nd-1-two-layers", "--pass", "2", "--date", "2027-06-05", "--wind", "5", "--json");
    assertThat(called.err()).isEmpty();
    JsonNode root = JSON.readTree(called.out());
    assertThat(root.get("id").textValue()).isEqualTo("A-27-001");
    assertThat(root.get("rows")).hasSize(4);
    // 2 pt/acre on 76 acres are 152 pt.
    assertThat(root.get("rows").get(0).get("total").decimalValue()).isEqualByComparingTo("152");
    assertThat(root.get("rows").get(0).get("totalUnit").textValue()).isEqualTo("pt");
    assertThat(root.get("rows").get(1).get("total").isNull()).isTrue();
    assertThat(DemoBookCopy.journal(book)).last().asString().contains("nd-1-two-layers pass 2");
    assertThat(record("nd-1-two-layers", "--pass", "3").err())
        .contains("has no pass 3; write 1 to 2");
  }

  /** 7 CFR 110.3 (from memory): what is asked of restricted-use products, within 14 days. */
  @Test
  void whatTheFederalRecordLacksIsNamedWithTheDaysLeft() {
    String[] call = {
      "--field", "ND-2", "--date", "2027-05-10", "atrazine 1.0 lb ai/acre", "--stage", "V3"
    };
    String out = recordOn("2027-05-12", call).out().replaceAll("\\s+", " ");
    assertThat(out)
        .contains("Restricted use: atrazine.")
        .contains("- the EPA registration number of atrazine")
        .contains("- the certificate number of atrazine")
        .contains("- the product that brought atrazine, and so its total amount")
        .contains("by 24 May 2027, 12 days from today");

    Called corrected =
        recordOn(
            "2027-05-30",
            "--corrects",
            "A-27-001",
            "atrazine-4sc 32 fl oz/acre",
            "--epa",
            "DEMO-1",
            "--applicator",
            "Applicator One",
            "--cert",
            "D-41");
    assertThat(corrected.err()).isEmpty();
    assertThat(corrected.out()).contains("A-27-001/2").contains("holds what the federal record");
    assertThat(recordOn("2027-05-30", "--corrects", "A-27-001/2", "--cert", "").out())
        .contains("6 days ago");
  }

  @Test
  void aCorrectionStandsInThePlaceOfARowOrTakesItAway() throws IOException {
    record("nd-1-june");
    assertThat(record("--corrects", "A-27-001/2", "--acres", "70").out())
        .contains("A-27-001/4")
        .contains("70 acres");
    assertThat(record("--corrects", "A-27-001/2", "--acres", "60").err())
        .contains("--corrects:1:1: A-27-001/2 is corrected already");
    Called voided = record("--corrects", "A-27-001/3", "--void", "--json");
    assertThat(JSON.readTree(voided.out()).get("rows")).isEmpty();
    assertThat(DemoBookCopy.journal(book))
        .last()
        .asString()
        .contains(",5,A-27-001/3,")
        .contains(",0,");
    assertThat(record("--corrects", "A-27-001/5", "glyphosate-4.5sl 24 fl oz/acre").out())
        .contains("A-27-001/6")
        .contains("24 fl oz/acre");
    assertThat(record("--corrects", "A-27-009/1", "--void").err())
        .contains("no row of the journal is 'A-27-009/1'");
    assertThat(record("--corrects", "A-27-001", "--void").err()).contains("say which one is wrong");
  }

  /** Ten times the highest rate was sprayed, so it is written down, and said. */
  @Test
  void whatIsBlockedIsRecordedAllTheSame() throws IOException {
    Called called =
        record("--field", "ND-1", "--date", "2027-06-08", "glyphosate-4.5sl 320 fl oz/acre");
    assertThat(called.code()).isEqualTo(ExitCode.DONE);
    assertThat(called.out())
        .contains("Verdict: blocked")
        .contains("WRITTEN")
        .contains("A-27-001/1");
    assertThat(DemoBookCopy.journal(book)).last().asString().startsWith("A-27-001,1");
  }

  @Test
  void everyMistakeIsOnePlainLineAndNothingIsWritten() throws IOException {
    List<String> before = DemoBookCopy.journal(book);
    for (String[] call :
        new String[][] {
          {"nd-1-june", "--end", "25:00"},
          {"nd-1-june", "--acres", "-3"},
          {"nd-1-june", "--wind", "fast"},
          {"nd-1-june", "--stage", "V99"},
          {"nd-1-june", "--date", "2027-06-31"},
          {"nd-1-june", "--date", "2027-07-01"},
          {"nd-1-june", "--id", "a/b"},
          {"nd-1-june", "--epa", "12-34"},
          {"nd-1-june", "--epa", "atrazine=12-34"},
          {"nd-1-june", "--void"},
          {"nd-1-june", "--corrects", "A-26-029/1", "--pass", "1"},
          {"nd-1-july"},
          {"--corrects", "A-26-029/1"},
          {"--corrects", "A-26-029/1", "crop-oil 1 % v/v"},
          {"--field", "ND-1"},
          {"--field", "ND-1", "--volume", "0", "glyphosate-4.5sl 32 fl oz/acre"},
          {"--field", "ND-1", "glyphosate-4.5sl 32 oz/acre"},
          {}
        }) {
      Called called = record(call);
      assertThat(called.code()).as(String.join(" ", call)).isEqualTo(ExitCode.WRONG_INPUT);
      assertThat(called.out()).isEmpty();
      assertThat(called.err().lines()).hasSize(1).noneMatch(l -> l.contains("Exception"));
    }
    assertThat(DemoBookCopy.journal(book)).isEqualTo(before);
    assertThat(Files.exists(book.resolve(".applications.csv.0.tmp"))).isFalse();
  }
}
