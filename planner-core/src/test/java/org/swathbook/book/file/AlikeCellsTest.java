package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvReader;
import org.swathbook.source.CsvTable;
import org.swathbook.source.Problems;

class AlikeCellsTest {
  private static CsvTable table(String text) {
    return new CsvReader()
        .read(
            "t.csv",
            text.getBytes(StandardCharsets.UTF_8),
            CsvColumns.required("id").andOptional("date", "acres", "note"),
            new Problems());
  }

  private static List<Boolean> asBefore(AlikeCells cells, CsvTable table) {
    List<Boolean> out = new ArrayList<>();
    table.rows().forEach(r -> out.add(cells.asBefore(r)));
    return out;
  }

  @Test
  void aRowIsLikeTheOneBeforeWhereItsColumnsSayTheSame() {
    CsvTable table =
        table("id,date,acres\nA,1 May,70\nB,1 May,70\nB,2 May,70\nB,1 May,70\nC,\"1 May\",70\n");
    assertThat(asBefore(new AlikeCells(List.of("date", "acres")), table))
        .containsExactly(false, true, false, false, true);
    assertThat(asBefore(new AlikeCells(List.of("id", "date")), table))
        .containsExactly(false, false, false, false, false);
  }

  @Test
  void aColumnThatTheTableLacksSaysTheSameInEveryRow() {
    assertThat(asBefore(new AlikeCells(List.of("note", "date")), table("id,date\nA,x\nB,x\n")))
        .containsExactly(false, true);
  }

  @Test
  void anotherTableBeginsAnew() {
    AlikeCells cells = new AlikeCells(List.of("acres"));
    assertThat(asBefore(cells, table("id,acres\nA,70\nB,70\n"))).containsExactly(false, true);
    assertThat(asBefore(cells, table("acres,id\n70,A\n70,B\n"))).containsExactly(false, true);
  }
}
