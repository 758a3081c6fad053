package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A copied demo book in which somebody has been out. */
class ScoutedBookTest {
  private static final String HEAD =
      "date,field,zone,weed,height,count,area,cropStage,irrigation,note\n";

  @TempDir Path folder;

  private Called season(String rows, String today) throws IOException {
    Path book = folder.resolve("book" + rows.length() + today);
    SmallBook.of(book, "ND-1");
    SmallBook.copyProgram(book, "nd-1-two-layers.yaml");
    Files.writeString(book.resolve("scouting.csv"), HEAD + rows);
    return Called.with("season", "nd-1-two-layers", "--book", book.toString(), "--today", today);
  }

  @Test
  void aHeightThatWasSeenShowsInTheSeasonAndMakesWeedsTooTall() throws IOException {
    String row = "2027-06-01,ND-1,,AMAPA,9-14 in,23,10 ft2,V2,,\n";
    Called plain = season("", "2027-06-02");
    Called seen = season(row, "2027-06-02");

    assertThat(seen.out())
        .contains("Note: Scouted in ND-1 on 2027-06-01: soybean at V2; Palmer amaranth 9 to 14 in");
    assertThat(seen.out().replaceAll("\\s+", " "))
        .contains("24.76 plants/m² (2.3 /ft²)")
        .contains("This stands in the place of the model from that day on.")
        .contains("Palmer amaranth: 25 plants/m² up; half to 14.9 in")
        .contains("weed-too-tall · pass 2 · glufosinate-ammonium · Palmer amaranth")
        .contains("Palmer amaranth: 90 % of the plants are up to 17.5 in tall at this pass");
    assertThat(plain.out()).contains("Palmer amaranth").doesNotContain("half to 14.9 in");
    assertThat(seen.out()).isNotEqualTo(plain.out());
    assertThat(plain.out()).doesNotContain("Scouted");
  }

  @Test
  void aRowLaterThanTodayIsNotedAndNotUsed() throws IOException {
    Called plain = season("", "2027-05-20");
    Called later = season("2027-06-01,ND-1,,AMAPA,9-14 in,,,,,\n", "2027-05-20");

    String note =
        "Note: scouting.csv: 1 row of ND-1 is later than today, 2027-05-20, and not used.\n";
    assertThat(later.out()).contains(note);
    assertThat(later.out().replace(note, "")).isEqualTo(plain.out());
  }

  @Test
  void aMistakeIsOnePlainLine() throws IOException {
    Called wrong = season("2027-06-01,ND-1,,AMAPA,,23,,,,\n", "2027-06-02");

    assertThat(wrong.code()).isEqualTo(2);
    assertThat(wrong.err())
        .isEqualTo(
            "scouting.csv:2:25: '23' counts plants on no area; name it in area, as 10 ft2, or write"
                + " a density, as '3 /m2'\n");
    assertThat(wrong.out()).isEmpty();
  }
}
