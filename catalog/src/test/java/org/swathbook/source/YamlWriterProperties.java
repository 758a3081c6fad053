package org.swathbook.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;

/** What is written is read: the same nodes, their places aside. */
class YamlWriterProperties {
  private static final Mark NOWHERE = Mark.startOf("");

  @Property(tries = 400, edgeCases = EdgeCasesMode.NONE)
  void nodesReadBackTheSame(@ForAll("nodes") Node node) {
    String text = YamlWriter.text(node);
    assertThat(unmarked(Reading.yaml(text))).as(text).isEqualTo(node);
  }

  @Tag("slow")
  @Property(tries = 20_000, edgeCases = EdgeCasesMode.NONE)
  void manyNodesReadBackTheSame(@ForAll("nodes") Node node) {
    nodesReadBackTheSame(node);
  }

  /** Whatever a person may have written, in whatever style, survives being written by us. */
  @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE)
  void whatCanBeReadCanBeWritten(@ForAll("documents") String document) {
    Node read;
    try {
      read = Reading.yaml(document);
    } catch (ProblemsException e) {
      return;
    }
    assertThat(unmarked(Reading.yaml(YamlWriter.text(read)))).isEqualTo(unmarked(read));
  }

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
  void anyTextAtAllIsKept(@ForAll("texts") String text) {
    for (Node node : List.of(MapWriter.scalar(text), MapWriter.quoted(text))) {
      Node read = Reading.yaml(YamlWriter.text(new MapWriter().put("a", node).put("b", "").node()));
      assertThat(unmarked(read))
          .isEqualTo(unmarked(new MapWriter().put("a", node).put("b", "").node()));
    }
    // A text that only quotes can hold gets them, whatever the node says.
    Node bare = new ScalarNode(NOWHERE, text, false);
    Node read = Reading.yaml(YamlWriter.text(new MapWriter().put("a", bare).node()));
    assertThat(((MapNode) read).entries().get(0).value())
        .isInstanceOfSatisfying(ScalarNode.class, s -> assertThat(s.text()).isEqualTo(text));
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void linesHoldNothingThatNoEditorShows(@ForAll("nodes") Node node) {
    String text = YamlWriter.text(node);
    assertThat(text).endsWith("\n");
    assertThat(text.codePoints().filter(c -> c != '\n')).noneMatch(YamlReader::isUnseen);
  }

  private static Node unmarked(Node node) {
    if (node instanceof ScalarNode s) {
      return new ScalarNode(NOWHERE, s.text(), s.quoted());
    }
    if (node instanceof ListNode l) {
      return new ListNode(NOWHERE, l.items().stream().map(YamlWriterProperties::unmarked).toList());
    }
    return new MapNode(
        NOWHERE,
        ((MapNode) node)
            .entries().stream()
                .map(e -> new MapNode.Entry(e.key(), NOWHERE, unmarked(e.value())))
                .toList());
  }

  @Provide
  Arbitrary<Node> nodes() {
    return nodes(5);
  }

  private Arbitrary<Node> nodes(int depth) {
    Arbitrary<Node> scalars = scalars();
    if (depth == 1) {
      return scalars;
    }
    Arbitrary<Node> lists =
        Arbitraries.lazy(() -> nodes(depth - 1)).list().ofMaxSize(6).map(MapWriter::list);
    Arbitrary<Node> maps =
        Combinators.combine(
                texts().list().ofMaxSize(6),
                Arbitraries.lazy(() -> nodes(depth - 1)).list().ofSize(6))
            .as(YamlWriterProperties::map);
    return Arbitraries.frequencyOf(
        net.jqwik.api.Tuple.of(2, scalars),
        net.jqwik.api.Tuple.of(2, lists),
        net.jqwik.api.Tuple.of(4, maps));
  }

  private static Node map(List<String> keys, List<Node> values) {
    Map<String, Node> entries = new LinkedHashMap<>();
    for (int i = 0; i < keys.size(); i++) {
      entries.putIfAbsent(keys.get(i), values.get(i));
    }
    List<MapNode.Entry> out = new ArrayList<>();
    entries.forEach((key, value) -> out.add(new MapNode.Entry(key, NOWHERE, value)));
    return new MapNode(NOWHERE, out);
  }

  /** Quoted ones hold any text; the others what a file can hold without quotes. */
  private Arbitrary<Node> scalars() {
    return Combinators.combine(texts(), Arbitraries.of(true, false, false))
        .as(
            (text, quoted) ->
                new ScalarNode(
                    NOWHERE, text, quoted || !text.isEmpty() && !YamlScalars.isLiteral(text)));
  }

  @Provide
  Arbitrary<String> texts() {
    Arbitrary<String> scraps =
        Arbitraries.of(
            "a",
            "rate",
            "none",
            "0.5 lb ai/acre",
            ":",
            ": ",
            "-",
            "- ",
            " ",
            "  ",
            "\n",
            "\n\n",
            "[",
            "]",
            "{",
            "}",
            ",",
            "'",
            "\"",
            "#",
            " #",
            "&x",
            "*x",
            "!t",
            "|",
            ">",
            "?",
            "%",
            "@",
            "`",
            "---",
            "...",
            "~",
            "<<",
            "=",
            "\\",
            "\t",
            "\r",
            "\0",
            "\u001b",
            "\u0085",
            "\u00a0",
            "\u2028",
            "\u2029",
            "\ufeff",
            "\ufffe",
            "\ud83c\udf3d",
            "\ud83f\udffe",
            "\ud800",
            "\udc00",
            "é",
            "1_000",
            "0x1F",
            "null",
            "yes",
            "2026-11-01",
            "\\u0041");
    return Arbitraries.frequencyOf(
        net.jqwik.api.Tuple.of(4, Arbitraries.of("crop", "corn", "post", "from memory", "2 %")),
        net.jqwik.api.Tuple.of(4, scraps.list().ofMaxSize(8).map(l -> String.join("", l))),
        net.jqwik.api.Tuple.of(2, Arbitraries.strings().ofMaxLength(40)),
        net.jqwik.api.Tuple.of(
            1, Arbitraries.strings().withChars("ab ,:#\n").ofMinLength(900).ofMaxLength(1200)));
  }

  @Provide
  Arbitrary<String> documents() {
    Arbitrary<String> scraps =
        Arbitraries.of(
            "a: ",
            "b: ",
            "c:\n",
            "- ",
            "\n",
            "\n  ",
            "\n    ",
            " ",
            "[",
            "]",
            "{",
            "}",
            ", ",
            "'x y'",
            "\"x\\ny\"",
            "# remark",
            "|\n",
            "|-\n",
            "|2+\n",
            ">\n",
            ">-\n",
            "plain text",
            "x",
            "? ",
            ": ",
            "~",
            "1",
            "\u00e9",
            "\ud83c\udf3d",
            "\u2028",
            "''");
    return scraps.list().ofMinSize(1).ofMaxSize(14).map(l -> String.join("", l));
  }
}
