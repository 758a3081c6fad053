package org.swathbook.catalog.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import org.swathbook.source.ProblemsException;

/** A sound catalog, cut, doubled and scribbled over at random: it loads, or it says why not. */
class BrokenCatalogProperties {

  @Property(tries = 300)
  void aScribbleGivesACatalogOrProblems(
      @ForAll("paths") String path,
      @ForAll("places") double from,
      @ForAll("lengths") int cut,
      @ForAll("scribbles") String scribble) {
    String text = new SmallCatalog().text(path);
    int at = (int) (from * text.length());
    int end = Math.min(text.length(), at + cut);
    check(path, text.substring(0, at) + scribble + text.substring(end));
  }

  /** Whole values are exchanged for others that might stand somewhere else. */
  @Property(tries = 300)
  void aStrangeValueGivesACatalogOrProblems(
      @ForAll("paths") String path,
      @ForAll("places") double where,
      @ForAll("values") String value) {
    String text = new SmallCatalog().text(path);
    int colon = text.indexOf(": ", (int) (where * text.length()));
    if (colon < 0) {
      return;
    }
    int end = colon + 2;
    while (end < text.length() && ",}]\n".indexOf(text.charAt(end)) < 0) {
      end++;
    }
    check(path, text.substring(0, colon + 2) + value + text.substring(end));
  }

  @Tag("slow")
  @Property(tries = 10_000)
  void manyScribbles(
      @ForAll("paths") String path,
      @ForAll("places") double from,
      @ForAll("lengths") int cut,
      @ForAll("scribbles") String scribble) {
    aScribbleGivesACatalogOrProblems(path, from, cut, scribble);
  }

  @Tag("slow")
  @Property(tries = 10_000)
  void manyStrangeValues(
      @ForAll("paths") String path,
      @ForAll("places") double where,
      @ForAll("values") String value) {
    aStrangeValueGivesACatalogOrProblems(path, where, value);
  }

  private static void check(String path, String text) {
    SmallCatalog changed = new SmallCatalog().file(path, text);
    try {
      assertThat(changed.load().ingredients()).isNotEmpty();
    } catch (ProblemsException e) {
      assertThat(e.problems())
          .isNotEmpty()
          .allMatch(p -> p.mark().line() >= 1 && p.mark().column() >= 1)
          .allMatch(p -> p.toString().lines().count() == 1);
    }
  }

  @Provide
  Arbitrary<String> paths() {
    return Arbitraries.of(SmallCatalog.PATHS);
  }

  @Provide
  Arbitrary<Double> places() {
    return Arbitraries.doubles().between(0, true, 1, false);
  }

  @Provide
  Arbitrary<Integer> lengths() {
    return Arbitraries.integers().between(0, 12);
  }

  @Provide
  Arbitrary<String> scribbles() {
    return Arbitraries.of(
            "",
            " ",
            "\n",
            "x",
            "0",
            "-",
            ":",
            ": ",
            "- ",
            "[",
            "]",
            "{",
            "}",
            ",",
            "\"",
            "é",
            "%",
            "none",
            "\n  ",
            "9".repeat(30),
            "sources")
        .list()
        .ofMaxSize(3)
        .map(l -> String.join("", l));
  }

  @Provide
  Arbitrary<String> values() {
    return Arbitraries.of(
        List.of(
            "none",
            "[]",
            "{}",
            "\"\"",
            "''",
            "[none]",
            "[[]]",
            "{x: 1}",
            "-1",
            "0",
            "1e9",
            "NaN",
            "9".repeat(40),
            "0 days",
            "-5 days",
            "99999 days",
            "0.0 lb ai/acre",
            "5 lb/acre",
            "1-2 lb ae/acre",
            "100 %",
            "0 %",
            "-3 in",
            "0 in",
            "yes",
            "no",
            "planting",
            "emergence",
            "R1",
            "V1",
            "corn",
            "soybean",
            "any",
            "glyphosate",
            "all",
            ".",
            "..",
            "-",
            "99999999 F",
            "{days: 3}",
            "[{interval: none}]",
            "12 h",
            "2027-01-01",
            "3 gal/acre"));
  }
}
