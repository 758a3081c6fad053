package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.terminal.ExitCode;

/** {@code record --export} and {@code --notice} on a copy of the demo book. */
class RecordExportTest {
  @TempDir Path folder;
  private Path book = Path.of("");

  @BeforeEach
  void copy() throws IOException {
    book = DemoBookCopy.into(folder);
    Called made =
        Called.with(
            "record",
            "nd-1-june",
            "--end",
            "13:10",
            "--epa",
            "glyphosate-4.5sl=DEMO-113",
            "--note",
            "=SUM(A1)",
            "--book",
            book.toString(),
            "--today",
            "2027-06-10");
    assertThat(made.err()).isEmpty();
  }

  private Called export(String... more) {
    return Called.with("record", book, more);
  }

  @Test
  void aTableForWhoeverAsksNarrowedByFieldGrowerAndDays() {
    Called called = export("--export", "--field", "nd-1", "--from", "2027-01-01");
    assertThat(called.err()).isEmpty();
    List<String> lines = called.out().lines().toList();
    assertThat(lines).hasSize(4);
    assertThat(lines.get(0))
        .startsWith("id,line,customer,field,fieldName,county,state,lat,lon,date,startTime,endTime")
        .endsWith("mix,note,lacking");
    // 2 pt/acre on 76 acres are 152 pt.
    assertThat(lines.get(1))
        .startsWith("A-27-001,1,Ninebark Draw Farms,ND-1,Long Eighty,Invented,NE,40.72,-98.61,")
        .contains(",2,pt/acre,152,pt,")
        .contains(",\"'=SUM(A1); in 15 gal/acre");
    assertThat(called.out()).contains("\r\n");
    assertThat(export("--export", "--customer", "ninebark draw farms").out().lines())
        .hasSizeGreaterThan(4)
        .allSatisfy(l -> assertThat(l).containsPattern("^id,|Ninebark Draw Farms"));
    assertThat(export("--export", "--to", "2025-04-30").out().lines()).hasSize(4);
  }

  /** The demo's atrazine rows name the ingredient, and the product is what the law asks for. */
  @Test
  void whatTheFederalRecordLacksStandsInTheLastColumn() {
    assertThat(export("--export", "--field", "QH-1", "--to", "2025-04-30").out())
        .contains("the product that brought atrazine, and so its total amount");
  }

  @Test
  void anEntryNotice() {
    Called called = export("--notice", "A-27-001");
    assertThat(called.err()).isEmpty();
    assertThat(called.out().lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
    Goldens.check("demo/notice.txt", called.out());
    assertThat(export("--notice", "A-26-029").out())
        .contains("The end of the spraying was not written down; counted from midnight after it.");
  }

  /** Two passes of one day in the demo journal. */
  @Test
  void theNoticesOfADay() {
    Called called = export("--notice", "2026-04-30");
    assertThat(called.err()).isEmpty();
    String[] notices = called.out().split("\f");
    assertThat(notices).hasSize(2);
    assertThat(notices[0]).isEqualTo(export("--notice", "A-26-004").out());
    assertThat(notices[1]).isEqualTo(export("--notice", "A-26-005").out());
    assertThat(export("--notice", "2030-01-01").err()).contains("no pass on 2030-01-01");
  }

  @Test
  void everyMistakeIsOnePlainLine() {
    for (String[] call :
        new String[][] {
          {"--export", "--field", "XX-1"},
          {"--export", "--customer", "Nobody"},
          {"--export", "--from", "2030-01-01"},
          {"--export", "--notice", "A-27-001"},
          {"--notice", "A-99-001"},
          {"--notice", "A-27-001", "--field", "ND-1"},
          {"--export", "nd-1-june"},
          {"--customer", "Ninebark Draw Farms", "nd-1-june"},
          {"--export", "--json"}
        }) {
      Called called = export(call);
      assertThat(called.code()).as(String.join(" ", call)).isEqualTo(ExitCode.WRONG_INPUT);
      assertThat(called.out()).isEmpty();
      assertThat(called.err().lines()).hasSize(1).noneMatch(l -> l.contains("Exception"));
    }
  }
}
