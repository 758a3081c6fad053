package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.terminal.ExitCode;

/** Input that is wrong ends in plain lines, exit code 2, no result and nothing written. */
class WrongInputTest {
  @TempDir Path dir;
  private Path book;

  @BeforeEach
  void makeBook() throws IOException {
    book = SmallBook.of(dir.resolve("book"), "ND-1", "ND-2");
  }

  private static void isRefusedWith(Called called, String... lines) {
    assertThat(called.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(called.out()).isEmpty();
    assertThat(called.err().lines()).containsExactly(lines);
  }

  @Test
  void anUnknownFieldNamesTheNearest() {
    isRefusedWith(
        Called.with("plan", book, "ND-1", "ND-3"),
        "swathbook plan: there is no field 'ND-3'; the nearest is ND-1; see 'swathbook plan"
            + " --help'");
    isRefusedWith(
        Called.with("plan", book, "elsewhere"),
        "swathbook plan: there is no field 'elsewhere'; there are ND-1, ND-2; see 'swathbook plan"
            + " --help'");
  }

  /** A site, or a product, in the place of an ingredient. */
  @Test
  void whatIsNoIngredientIsToldWithTheIngredientsThatMayBeMeant() {
    isRefusedWith(
        Called.with("plan", book, "ND-1", "--why-not", "site 9"),
        "swathbook plan: there is no ingredient 'site 9'; it is a site of action, name an"
            + " ingredient of it: glyphosate; see 'swathbook plan --help'");
    isRefusedWith(
        Called.with("plan", book, "ND-1", "--must-include", "glyphosate-4.5sl"),
        "swathbook plan: there is no ingredient 'glyphosate-4.5sl'; it is a product, name an"
            + " ingredient of it: glyphosate; see 'swathbook plan --help'");
    isRefusedWith(
        Called.with("plan", book, "ND-1", "--must-include", "glyphosat"),
        "swathbook plan: there is no ingredient 'glyphosat'; the nearest is glyphosate; see"
            + " 'swathbook plan --help'");
    isRefusedWith(
        Called.with("plan", book, "ND-1", "--why-not", "site 99"),
        "swathbook plan: there is no site of action 99; write one as 'site 14'; see 'swathbook"
            + " plan --help'");
  }

  @Test
  void aBrokenBookIsToldWithEveryPlace() throws IOException {
    SmallBook.append(book, "weeds.csv", "ND-1,NOSUCH,lots,yes,,,,");
    Path yaml = book.resolve("book.yaml");
    Files.writeString(
        yaml, Files.readString(yaml).replace("passCost: 9.00 $/acre", "passCost: cheap"));
    Called called = Called.with("plan", book, "ND-1", "--save");
    assertThat(called.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(called.out()).isEmpty();
    assertThat(called.err().lines())
        .hasSize(3)
        .allSatisfy(l -> assertThat(l).matches("[a-z]+\\.(csv|yaml):\\d+:\\d+: .+; .+"));
    assertThat(called.err())
        .contains("book.yaml:12:11: ")
        .contains("weeds.csv:8:6: ")
        .contains("weeds.csv:8:13: ");
    assertThat(book.resolve("programs")).doesNotExist();
  }

  @Test
  void aFolderThatIsNoBookIsToldAsOne() {
    Called called = Called.with("plan", dir.resolve("nowhere"));
    assertThat(called.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(called.out()).isEmpty();
    assertThat(called.err().lines()).singleElement().asString().contains("there is no such folder");
  }

  @Test
  void withoutABookItSaysWhatToWrite() {
    isRefusedWith(
        Called.with("plan"),
        "swathbook plan: no book: the current folder holds no book.yaml; name a folder that does,"
            + " --book DIR; see 'swathbook plan --help'");
  }

  @Test
  void anUnknownProgramNamesTheNearest() throws IOException {
    Files.createDirectories(book.resolve("programs"));
    Files.writeString(book.resolve("programs/nd-1.yaml"), "format: swathbook.program/1\n");
    Called called = Called.with("season", book, "nd-2");
    assertThat(called.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(called.out()).isEmpty();
    assertThat(called.err().lines()).singleElement().asString().contains("did you mean 'nd-1'?");
  }

  @Test
  void aBrokenProgramIsToldWithItsPlace() throws IOException {
    Files.createDirectories(book.resolve("programs"));
    Files.writeString(
        book.resolve("programs/p.yaml"),
        """
        format: swathbook.program/1
        name: P
        field: ND-1
        passes:
          - {at: someday, mix: [{ingredient: metribuzin, rate: 0.38 lb ai/acre}]}
        """);
    Called called = Called.with("season", book, "p");
    assertThat(called.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(called.out()).isEmpty();
    assertThat(called.err().lines())
        .singleElement()
        .asString()
        .startsWith("programs/p.yaml:5:10: ");
  }

  @Test
  void aDateThatIsNoneIsAWrongCall() {
    isRefusedWith(
        Called.with("plan", "--today", "2027-02-30"),
        "swathbook plan: Invalid value for option '--today': '2027-02-30' is no date of the"
            + " calendar; write it as 2027-03-01; see 'swathbook plan --help'");
  }

  @Test
  void optionsThatContradictAreWrongCalls() {
    isRefusedWith(
        Called.with("plan", book, "--force"),
        "swathbook plan: --force means nothing without --save, --html or --handout; see 'swathbook plan --help'");
    isRefusedWith(
        Called.with("plan", book, "--threads", "0"),
        "swathbook plan: --threads must be 1 or more; see 'swathbook plan --help'");
  }

  @Test
  void aWrongRateHidesNoWrongName() {
    Called called = Called.with("check", book, "--field", "ND-1", "nosuchthing 32 oz/acre");
    assertThat(called.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(called.err().lines())
        .satisfiesExactlyInAnyOrder(
            l -> assertThat(l).contains("'nosuchthing' is no product or ingredient"),
            l -> assertThat(l).contains("'32 oz/acre' says oz"));
  }

  @Test
  void anUnknownRuleNamesTheNearest() {
    isRefusedWith(
        Called.with("rules", "anual-cap"),
        "swathbook rules: there is no rule 'anual-cap'; the nearest is annual-cap; see 'swathbook"
            + " rules --help'");
    isRefusedWith(
        Called.with("rules", "insecticide"),
        "swathbook rules: there is no rule 'insecticide'; the nearest is insecticide-partner;"
            + " see 'swathbook rules --help'");
    isRefusedWith(
        Called.with("rules", "interval"),
        "swathbook rules: there is no rule 'interval'; there are harvest-interval,"
            + " next-crop-interval, planting-interval, repeat-interval; see 'swathbook rules"
            + " --help'");
    isRefusedWith(
        Called.with("rules", "zzz"),
        "swathbook rules: there is no rule 'zzz'; 'swathbook rules' lists them all; see 'swathbook"
            + " rules --help'");
  }

  /** Figures that no farm has would run over where costs are added up; a slip, so it is told. */
  @Test
  void figuresBeyondAllMeasureAreRefused() throws IOException {
    SmallBook.copyProgram(book, "nd-1-two-layers.yaml");
    Path program = book.resolve("programs/nd-1-two-layers.yaml");
    String sound = Files.readString(program);
    for (String amount : new String[] {"32000000000000000000", "900000000", "32000000"}) {
      Files.writeString(program, sound.replace("rate: 32 fl oz", "rate: " + amount + " fl oz"));
      Called called = Called.with("season", book, "nd-1-two-layers");
      assertThat(called.code()).isEqualTo(ExitCode.WRONG_INPUT);
      assertThat(called.err().lines())
          .singleElement()
          .asString()
          .matches(
              "programs/nd-1-two-layers\\.yaml:15:\\d+: .*(too large|more than any sprayer).*");
    }
    Files.writeString(program, sound);
    Path fields = book.resolve("fields.csv");
    Files.writeString(fields, Files.readString(fields).replace(",76.0,", ",7600000,"));
    Path prices = book.resolve("prices.csv");
    Files.writeString(
        prices, Files.readString(prices).replace("30.50 $/gal", "3050000000000 $/gal"));
    Called called = Called.with("season", book, "nd-1-two-layers");
    assertThat(called.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(called.err())
        .contains("fields.csv:2:38: ", "acres are no field; write at most 100000")
        .contains("prices.csv:5:16: ", "too large a number");
  }

  /** So large or so small that what is reckoned with them is no number, or fills the page. */
  @Test
  void amountsBeyondAllMeasureAreWrongCalls() {
    for (String far : new String[] {"1e300", "1.7e308", "4.9e-324", "1000001", "0.0009"}) {
      for (String option : new String[] {"--spacing", "--mph", "--gpa", "--gravity"}) {
        List<String> call =
            new ArrayList<>(List.of("calibrate", "--spacing", "20", "--mph", "10", "--gpa", "15"));
        call.addAll(List.of("--gravity", "1.28"));
        call.set(call.indexOf(option) + 1, far);
        Called called = Called.with(call.toArray(String[]::new));
        assertThat(called.code()).isEqualTo(ExitCode.WRONG_INPUT);
        assertThat(called.err())
            .contains(option + " is out of all measure; write a number from 0.001 to 1000000");
      }
    }
    Called least =
        Called.with("calibrate", "--spacing", "0.001", "--mph", "1000000", "--gpa", "1000000");
    assertThat(least.code()).as(least.err()).isZero();
    assertThat(Called.with("load", book, "x", "--acres", "1e300", "--tank", "1e300").err())
        .contains("--acres is out of all measure");
  }

  @Test
  void aDayOfNoBookIsAWrongCall() {
    for (String day : new String[] {"+999999999-12-31", "-999999999-01-01", "1899-12-31"}) {
      assertThat(Called.with("escapes", "x", "--today=" + day).err())
          .contains("'" + day + "' is no day of any book; write it as 2027-03-01");
    }
  }

  @Test
  void whatIsNoNumberIsToldInPlainWords() {
    for (String no : new String[] {"abc", "12d", "1,200", "0x1p3"}) {
      isRefusedWith(
          Called.with("calibrate", "--spacing=" + no),
          "swathbook calibrate: Invalid value for option '--spacing': '"
              + no
              + "' is no number; write it as 12.5; see 'swathbook calibrate --help'");
    }
    for (String no : new String[] {"abc", "2.5", "99999999999"}) {
      isRefusedWith(
          Called.with("plan", book, "--threads=" + no),
          "swathbook plan: Invalid value for option '--threads': '"
              + no
              + "' is no whole number; write it as 12; see 'swathbook plan --help'");
    }
    isRefusedWith(
        Called.with("plan", book, "--save=abc"),
        "swathbook plan: Invalid value for option '--save': it takes no value, and 'abc' was given;"
            + " see 'swathbook plan --help'");
  }

  @Test
  void aCommandThatIsFarFromAnyIsNotLikenedToOne() {
    isRefusedWith(
        Called.with("spray", "everything"),
        "swathbook: Unmatched arguments from index 0: 'spray', 'everything'; see 'swathbook"
            + " --help'");
  }

  /** A folder is no program, whether it is typed or lies among those of the book. */
  @Test
  void aFolderInPlaceOfAFileIsTold() throws IOException {
    Files.createDirectories(book.resolve("programs/odd.yaml"));
    isRefusedWith(
        Called.with("season", book, "odd"),
        "odd:1:1: there is no such file, and no program of this name in the book; write the path of"
            + " a file; the folder programs of the book is empty");
    isRefusedWith(
        Called.with("season", book, book.toString()),
        book
            + ":1:1: there is no such file, and no program of this name in the book; this is a folder;"
            + " name a file in it");
  }

  /** A name of nothing has no file to be told with. */
  @Test
  void aBlankNameIsTold() {
    isRefusedWith(
        Called.with("season", book, ""),
        "'':1:1: there is no such file, and no program of this name in the book; write the path of a"
            + " file; the folder programs of the book is empty");
  }

  /** A stage that the crop reaches too late for the season, and a weed that never grows so tall. */
  @Test
  void aPassWhoseTimeNeverComesIsToldWithItsPlace() throws IOException {
    Files.createDirectories(book.resolve("programs"));
    Files.writeString(
        book.resolve("programs/late.yaml"),
        """
        format: swathbook.program/1
        name: never
        field: ND-1
        passes:
          - at: when AMAPA is 400 in
            mix: [{product: glyphosate-4.5sl, rate: 32 fl oz/acre}]
          - at: when KCHSC is 2 in
            mix: [{product: glyphosate-4.5sl, rate: 32 fl oz/acre}]
        """);
    for (Called called :
        List.of(
            Called.with("season", book, "late"),
            Called.with("check", book, "--program", "late"),
            Called.with("plan", book, "--keep", "late"),
            Called.with("plan", book, "ND-1", "--compare", "late", "best"))) {
      assertThat(called.code()).isEqualTo(ExitCode.WRONG_INPUT);
      assertThat(called.out()).isEmpty();
      assertThat(called.err().lines())
          .satisfiesExactly(
              l ->
                  assertThat(l)
                      .startsWith("programs/late.yaml:5:9: 'when AMAPA is 400 in' does not come in")
                      .endsWith("in most weather years; give a date or days after planting"),
              l ->
                  assertThat(l)
                      .startsWith("programs/late.yaml:7:9: KCHSC is no weed of field ND-1; "));
    }
  }
}
