package org.swathbook.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class YamlReaderTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "yes",
        "no",
        "on",
        "null",
        "~",
        "2027-01-01",
        "1_000",
        "0x1F",
        "012",
        "1e3",
        ".5",
        "5.0"
      })
  void scalarsStayAsTheyAreWritten(String text) {
    assertThat(Reading.yaml("a: " + text))
        .isInstanceOfSatisfying(
            MapNode.class,
            m ->
                assertThat(m.find("a"))
                    .contains(new ScalarNode(new Mark("x.yaml", 1, 4), text, false)));
  }

  @Test
  void everyNodeKnowsItsPlace() {
    MapNode root =
        (MapNode)
            Reading.yaml(
                "# remark\nuses:\n  - crop: corn\n    'two words': [a, \"b\"]\r\nend: >\n  folded\n");
    assertThat(root.mark()).hasToString("x.yaml:2:1");
    ListNode uses = (ListNode) root.find("uses").orElseThrow();
    assertThat(uses.mark()).hasToString("x.yaml:3:3");
    MapNode use = (MapNode) uses.items().get(0);
    assertThat(use.entries().get(1).keyMark()).hasToString("x.yaml:4:5");
    ListNode words = (ListNode) use.find("two words").orElseThrow();
    assertThat(words.items().get(1))
        .isEqualTo(new ScalarNode(new Mark("x.yaml", 4, 22), "b", true));
    assertThat(root.find("end").orElseThrow().mark()).hasToString("x.yaml:5:6");
  }

  @Test
  void columnsCountCharactersAndNotBytesOrHalves() {
    MapNode root = (MapNode) Reading.yaml("{é𝒳: 1, b: 2}");
    assertThat(root.find("b").orElseThrow().mark()).hasToString("x.yaml:1:12");
  }

  /** Quotes are looked for where the text starts in the file, whatever stands before it. */
  @Test
  void quotesAreSeenBehindHalvesToo() {
    MapNode root = (MapNode) Reading.yaml("{é𝒳: 1, b: '2', c: 3, é: \"4\"}");
    assertThat(root.entries())
        .extracting(e -> ((ScalarNode) e.value()).quoted())
        .containsExactly(false, true, false, true);
  }

  @Test
  void aByteOrderMarkIsNoPartOfTheText() {
    assertThat(Reading.yaml("\uFEFFa: 1").mark()).hasToString("x.yaml:1:1");
  }

  @ParameterizedTest(name = "{index}")
  @MethodSource("broken")
  void brokenTextSaysWhereAndWhat(String text, String expected) {
    assertThat(Reading.yamlProblems(text))
        .first()
        .asString()
        .startsWith(expected)
        .matches("[^;]+:\\d+:\\d+: .+; .+");
  }

  static Stream<Arguments> broken() {
    return Stream.of(
        arguments("", "x.yaml:1:1: the file is empty"),
        arguments("# only a remark", "x.yaml:1:1: the file is empty"),
        arguments("- a", "x.yaml:1:1: the file holds a list"),
        arguments("a", "x.yaml:1:1: the file holds a single value"),
        arguments("a: 1\na: 2", "x.yaml:2:1: the key 'a' stands here for the second time"),
        arguments("a: b: c", "x.yaml:1:5: a colon where none can stand"),
        arguments("a: b\n  c: d", "x.yaml:2:4: a colon where none can stand"),
        arguments("k:\n  a: [1, 2\n", "x.yaml:2:6: a bracket is not closed"),
        arguments("a: {b: c", "x.yaml:1:4: a bracket is not closed"),
        arguments("a: [1 }", "x.yaml:1:7: a bracket is not closed"),
        arguments("a: 1\nb: \"x\nc: 2", "x.yaml:2:4: a quote is not closed"),
        arguments("a: 'x' y", "x.yaml:1:8: text follows where the value has already ended"),
        arguments("a: 1\n- b", "x.yaml:2:1: this line does not fit those above it"),
        arguments("- a\nb: c", "x.yaml:2:1: this line does not fit those above it"),
        arguments("a: @b", "x.yaml:1:4: a text that starts with a sign"),
        arguments("a: %b", "x.yaml:1:4: a text that starts with a sign"),
        arguments("{a: 1}: 2", "x.yaml:1:2: a key that is no plain word"),
        arguments("a: &x 1", "x.yaml:1:4: an anchor (&)"),
        arguments("a: 1\nb: *a", "x.yaml:2:4: an alias (*)"),
        arguments("*a : 1", "x.yaml:1:1: an alias (*)"),
        arguments("a: !!str 1", "x.yaml:1:4: a tag (!)"),
        arguments("a: !own {b: 1}", "x.yaml:1:4: a tag (!)"),
        arguments("a: 1\n---\nb: 2", "x.yaml:3:1: a second document starts here"),
        arguments("a:\n\tb: 1", "x.yaml:2:1: a tab"),
        arguments("a: 1 \t# remark", "x.yaml:1:6: a tab"),
        arguments("a: \u0007", "x.yaml:1:4: a character that cannot be seen (U+0007)"),
        arguments("a: b\u2028c", "x.yaml:1:5: a character that cannot be seen (U+2028)"),
        arguments("a: b\u0000", "x.yaml:1:5: a NUL character"),
        arguments("[".repeat(200), "x.yaml:1:31: lists and maps lie more than 30 deep"));
  }

  @Test
  void everyFaultOfFormIsToldInOneRun() {
    assertThat(Reading.yamlProblems("a: &x 1\na: 2\nb: !t 3\n"))
        .extracting(p -> p.substring(0, p.indexOf(": ")))
        .containsExactly("x.yaml:1:4", "x.yaml:2:1", "x.yaml:3:4");
  }

  @Test
  void otherEncodingsAreRefusedByName() {
    assertThat(Reading.yamlProblems("a: 1\nb: é".getBytes(Charset.forName("windows-1252"))))
        .singleElement()
        .asString()
        .startsWith("x.yaml:2:4: ")
        .contains("Windows-1252");
    for (Charset c : new Charset[] {StandardCharsets.UTF_16, StandardCharsets.UTF_16LE}) {
      assertThat(Reading.yamlProblems("a: 1".getBytes(c)))
          .singleElement()
          .asString()
          .startsWith("x.yaml:1:1: ")
          .contains("UTF-16");
    }
  }

  @Test
  void whatIsTooLongIsNotRead() {
    assertThat(Reading.yamlProblems(new byte[YamlReader.MOST_BYTES + 1]))
        .singleElement()
        .asString()
        .contains("more than 1000000 bytes");
  }
}
