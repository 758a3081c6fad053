package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.terminal.ExitCode;

/** A keeper's day: one file added to a book, looked at, reviewed, compared. */
class CatalogCommandTest {
  private static final String OURS =
      """
      format: swathbook.ingredient/1
      name: samplechlor              # invented
      aliases: [sample acid]
      site: 16                       # the older number of 15
      family: sample amide
      rateBasis: ai
      movement: shoot
      capGroup: samplechlor
      soil:
        residual: {at: 0.5 lb ai/acre, days: 20}
        residualHigh: {at: 1.0 lb ai/acre, days: 40}
        halfLife: 30 days
        activatingRain: 0.5 in
      foliar: none
      uses:
        - crop: corn
          position: [preplant, pre]
          timing: {before: emergence}
          trait: none
          rate:
            - {texture: coarse, rate: 0.5-0.75 lb ai/acre}
            - {rate: 0.5-1.0 lb ai/acre}
          cap: {amount: 1.5 lb ai/acre, per: season}
          intervals: {grain: none, forage: 45 days}
          note: an example
      usesComplete: yes
      rotation:
        soybean: 9 months
      reentry: 24 h
      sources:
        - {for: [all], source: invented for this test}
        - {for: [uses.corn.pre.rate], source: a label that was read}
      reviewed: 2025-06-01
      """;

  @TempDir Path dir;
  private Path book;

  @BeforeEach
  void write() throws IOException {
    book = dir.resolve("book");
    Files.createDirectories(book.resolve("catalog/ingredients"));
    Files.writeString(
        book.resolve("book.yaml"),
        "format: swathbook.book/1\nname: A book\nseason: 2027\npassCost: 9.00 $/acre\n");
    ours(OURS);
  }

  private void ours(String text) throws IOException {
    Files.writeString(book.resolve("catalog/ingredients/samplechlor.yaml"), text);
  }

  private Called call(String... words) {
    return Called.with(words);
  }

  /**
   * One file and no code: the entry is there, by its alias too, with its site in the current
   * number.
   */
  @Test
  void oneFileAddsAnIngredient() {
    Called list = call("catalog", "list", "ingredient", "--book", book.toString());
    assertThat(list.code()).isEqualTo(ExitCode.DONE);
    assertThat(list.out()).contains("samplechlor").contains("site 15  corn");
    Called shown = call("catalog", "show", "Sample Acid", "--book", book.toString());
    assertThat(shown.code()).isEqualTo(ExitCode.DONE);
    Goldens.check("sample/catalog-show.txt", shown.out());
    Goldens.check(
        "sample/catalog-show.json",
        call("catalog", "show", "samplechlor", "--json", "--book", book.toString()).out());
  }

  @Test
  void theFileItselfIsPrintedToBeChanged() throws IOException {
    assertThat(call("catalog", "show", "samplechlor", "--file", "--book", book.toString()).out())
        .isEqualTo(OURS);
    String starters = call("catalog", "show", "dicamba", "--file").out();
    assertThat(starters).startsWith("format: swathbook.ingredient/1\nname: dicamba\n");
    Files.writeString(book.resolve("catalog/ingredients/dicamba.yaml"), starters);
    assertThat(call("catalog", "diff", book.toString()).out())
        .startsWith("Swathbook · catalog, from starter to ")
        .endsWith("1 change\n\ningredient samplechlor\n  the ingredient is new\n");
  }

  @Test
  void reviewOfTheBooksOwnFiles() {
    Called lint = call("catalog", "lint", "--today", "2026-11-25", "--book", book.toString());
    assertThat(lint.code()).isEqualTo(ExitCode.DONE);
    assertThat(lint.err()).isEmpty();
    Goldens.check("sample/catalog-lint.txt", lint.out());
  }

  /** A catalog that cannot be read is what a review is for; it is no wrong call. */
  @Test
  void mistakesAreListedAsErrors() throws IOException {
    ours(OURS.replace("0.5-1.0 lb", "1.0-0.5 lb").replace("corn.pre.rate", "corn.post.rate"));
    Called lint =
        call("catalog", "lint", "--today", "2026-11-25", "--json", "--book", book.toString());
    assertThat(lint.code()).isEqualTo(ExitCode.BLOCKED);
    Goldens.check("sample/catalog-lint.json", lint.out());
    assertThat(call("catalog", "list", "--book", book.toString()).code())
        .isEqualTo(ExitCode.WRONG_INPUT);
  }

  @Test
  void whatChangedIsSaidInWords() throws IOException {
    Path before = dir.resolve("before");
    Files.createDirectories(before.resolve("ingredients"));
    Files.writeString(before.resolve("ingredients/samplechlor.yaml"), OURS);
    ours(
        OURS.replace("forage: 45 days", "forage: 60 days")
            .replace("reentry: 24 h\n", "")
            .replace("soybean: 9 months", "soybean: 9 months\n  wheat: 4 months"));
    Called diff = call("catalog", "diff", before.toString(), book.toString());
    assertThat(diff.code()).isEqualTo(ExitCode.DONE);
    assertThat(diff.out())
        .endsWith(
            """
            3 changes

            ingredient samplechlor
              re-entry interval is no longer stated, was 24 h
              next crop wheat is now stated, 4 months
              corn, preplant or pre: days before forage was 45 days, is now 60 days
            """);
    assertThat(call("catalog", "diff", "nowhere").err()).contains("there is no folder 'nowhere'");
  }

  @Test
  void anUnknownNameIsAnsweredWithTheNearest() {
    Called shown = call("catalog", "show", "fomesafin");
    assertThat(shown.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(shown.err()).contains("the catalog holds no 'fomesafin'; the nearest is fomesafen");
    assertThat(call("catalog", "show", "nothing-of-this-name").err())
        .contains("no 'nothing-of-this-name'; 'swathbook catalog list' lists them all");
    assertThat(call("catalog", "show", "dicamba", "--file", "--json").err())
        .contains("--file prints the file as it is written; it goes without --json");
    assertThat(call("catalog").err())
        .contains("a command is missing: list, show, lint, diff, impact, schema");
  }

  @Test
  void schemasForEditors() {
    List<String> names = call("catalog", "schema").out().lines().toList();
    assertThat(names).contains("ingredient", "responses", "book", "fields").doesNotHaveDuplicates();
    for (String name : names) {
      Called one = call("catalog", "schema", name);
      assertThat(one.code()).isEqualTo(ExitCode.DONE);
      assertThat(one.out()).startsWith("{").endsWith("}\n");
    }
    assertThat(call("catalog", "schema", "ingrediant").err())
        .contains("there is no schema 'ingrediant'; the nearest is ingredient");
  }

  @Test
  void aWeedShowsWhatControlsIt() {
    Called shown = call("catalog", "show", "Palmer amaranth");
    assertThat(shown.code()).isEqualTo(ExitCode.DONE);
    assertThat(shown.out()).contains("starter/weeds/amapa.yaml").contains("fomesafen");
    assertThat(shown.out().lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
  }

  @Test
  void whatTheValuesRestOn() {
    Called counted = call("catalog", "list", "--sources");
    assertThat(counted.code()).isEqualTo(ExitCode.DONE);
    assertThat(counted.out()).contains("published").contains("next-crop intervals");
    assertThat(counted.out().lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
  }
}
