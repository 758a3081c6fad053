package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the book has of a field for a reader alone: the crop before, and notes on weeds. */
class FieldNotesTest {
  private static final String NOTE =
      "Note on Palmer amaranth: combine streaks along the west headland, 2026";

  @TempDir static Path dir;
  private static Path book;

  @BeforeAll
  static void makeTheBook() throws IOException {
    book = SmallBook.of(dir.resolve("book"), "ND-1");
    SmallBook.copyProgram(book, "nd-1-two-layers.yaml");
  }

  @Test
  void textAndPageSayThem() throws IOException {
    Path page = dir.resolve("season.html");
    Called.with("season", book, "nd-1-two-layers", "--html", page.toString());

    assertThat(Called.with("season", book, "nd-1-two-layers").out())
        .contains("after corn, next crop corn planted 26 Apr 2028")
        .containsPattern("velvetleaf .*\n  " + NOTE + "\n\n");
    assertThat(WrittenPage.words(Files.readString(page)))
        .contains("after corn, next crop corn")
        .contains(NOTE);
  }

  /** The adviser's own words are none for the grower. */
  @Test
  void theGrowersCopyHasNoNotes() throws IOException {
    Path page = dir.resolve("grower.html");
    Called.with("plan", book, "ND-1", "--effort", "quick", "--handout", page.toString());

    assertThat(WrittenPage.words(Files.readString(page)))
        .contains("Palmer amaranth")
        .doesNotContain("combine streaks");
  }

  @Test
  void aCropBeforeThatNobodyWroteDownIsUnknown() throws IOException {
    Path bare = SmallBook.of(dir.resolve("bare"), "ND-1");
    SmallBook.copyProgram(bare, "nd-1-two-layers.yaml");
    Path fields = bare.resolve("fields.csv");
    String text = Files.readString(fields);
    String without = text.replace("-98.61,corn,corn,", "-98.61,,corn,");
    assertThat(without).isNotEqualTo(text);
    Files.writeString(fields, without);

    assertThat(Called.with("season", bare, "nd-1-two-layers").out())
        .contains("previous crop unknown, next crop corn");
  }
}
