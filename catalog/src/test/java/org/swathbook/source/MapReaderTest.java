package org.swathbook.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Unit;

class MapReaderTest {

  @Test
  void keysAreReadAndUnknownOnesToldWithTheNearest() {
    Problems problems = new Problems();
    MapReader m = Reading.map("rat: 1\nname: x\nacres: 12\n", problems);
    assertThat(m.require("name", Texts::text, "a name", "?")).isEqualTo("x");
    assertThat(m.find("rate", Texts::number, "1")).isEmpty();
    assertThat(m.require("acres", Texts::number, "80", 0.0)).isEqualTo(12.0);
    m.done();
    assertThat(problems.report())
        .containsExactly("x.yaml:1:1: the key 'rat' is not known here; did you mean 'rate'?");
  }

  @Test
  void allThatIsWrongIsToldAndReadingGoesOn() {
    Problems problems = new Problems();
    MapReader m = Reading.map("a: no number\nb: [1]\nc:\nd: {x: 1}\ne: []\n", problems);
    assertThat(m.require("a", Texts::number, "12", 7.0)).isEqualTo(7.0);
    assertThat(m.find("b", Texts::number, "12")).isEmpty();
    assertThat(m.find("c", Texts::number, "12")).isEmpty();
    assertThat(m.findList("d", "[1, 2]")).isEmpty();
    assertThat(m.findAll("e", Texts::number, "1")).isEmpty();
    assertThat(m.require("f", Texts::number, "12", 8.0)).isEqualTo(8.0);
    assertThat(m.findMap("a", "a: {b: 1}")).isEmpty();
    assertThat(problems.report())
        .containsExactly(
            "x.yaml:1:1: the key 'f' is missing; write 'f: 12'",
            "x.yaml:1:4: 'no number' is no number; write a number as 12.5, without unit",
            "x.yaml:1:4: here stands a single value; write 'a: {b: 1}'",
            "x.yaml:2:4: here stands a list; write for example '12'",
            "x.yaml:3:3: here stands nothing; write for example '12'",
            "x.yaml:4:4: here stands a map of keys; write a list, as '[1, 2]'",
            "x.yaml:5:4: the list is empty; write for example '1', or no key at all");
  }

  @Test
  void oneValueStandsForAListOfOne() {
    Problems problems = new Problems();
    MapReader m = Reading.map("a: 1\nb: [1, x, 3]\n", problems);
    assertThat(m.findAll("a", Texts::whole, "1")).containsExactly(1);
    assertThat(m.findAll("b", Texts::whole, "1")).containsExactly(1, 3);
    assertThat(problems.sorted())
        .extracting(p -> p.mark().toString())
        .containsExactly("x.yaml:2:8");
  }

  @Test
  void textsThatAreNoQuantities() {
    assertThat(Texts.yesNo("Yes")).isTrue();
    assertThat(Texts.date("2028-02-29")).isEqualTo(LocalDate.of(2028, 2, 29));
    assertThat(Texts.monthDay("06-30")).isEqualTo(MonthDay.of(6, 30));
    assertThat(Texts.monthDay("Jan 1")).isEqualTo(MonthDay.of(1, 1));
    assertThat(Texts.time("7:05")).hasToString("07:05");
    assertThat(Texts.share("95 %")).isEqualTo(0.95);
    assertThat(Texts.days("28 days")).isEqualTo(28);
    assertThat(Texts.in(Unit.CENTIMETRE, "4 in").parse("4 in")).isEqualTo(10.16);
    assertThat(Texts.oneOf(List.of("pre", "post")).parse("Post")).isEqualTo("post");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "true",
        "2027-02-30",
        "2027-2-3",
        "06-31",
        "25:00",
        "101 %",
        "-1 %",
        "2 h",
        "x",
        "1e3"
      })
  void whatIsNoneOfThemIsRefused(String text) {
    List<TextParser<?>> parsers =
        List.of(
            Texts::yesNo,
            Texts::number,
            Texts::whole,
            Texts::share,
            Texts::days,
            Texts::date,
            Texts::time,
            Texts::monthDay,
            Texts.in(Unit.CENTIMETRE, "4 in"),
            Texts.oneOf(List.of("pre")));
    for (TextParser<?> parser : parsers) {
      assertThat(read(parser, text)).isEmpty();
    }
  }

  private static Optional<?> read(TextParser<?> parser, String text) {
    try {
      return Optional.of(parser.parse(text));
    } catch (MeasureException e) {
      return Optional.empty();
    }
  }
}
