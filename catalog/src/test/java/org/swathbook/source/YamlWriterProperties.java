package org.swathbook.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;

/** What is written is read: the same nodes, their places aside. */
class YamlWriterProperties {
  private static final Mark NOWHERE = Mark.startOf("");
  private static final List<String> WORDS =
      List.of("crop", "corn", "post", "from memory", "2 %", "0.5 lb ai/acre", "a paper, page 2");
  private static final List<String> SCRAPS =
      List.of(
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

  @Property(tries = 1500, edgeCases = EdgeCasesMode.NONE)
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

  @Example
  void edgesOfWhatYamlTakes() {
    for (String text :
        List.of("...", "... a", "---", "--- a", "---a", "-", "- a", "?", ": a", "")) {
      Node root = new ScalarNode(NOWHERE, text, false);
      assertThat(unmarked(Reading.yaml(YamlWriter.text(root)))).as(text).isEqualTo(root);
    }
    for (int length = 990; length < 1040; length++) {
      Node longKey = new MapWriter().put("k".repeat(length), "a").put("b", "c").node();
      Node list = MapWriter.list(List.of(longKey));
      assertThat(unmarked(Reading.yaml(YamlWriter.text(list)))).isEqualTo(list);
    }
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
    return Arbitraries.randomValue(random -> node(random, 5));
  }

  private static Node node(Random random, int depth) {
    int kind = depth == 1 ? 0 : random.nextInt(4);
    if (kind == 0) {
      return scalar(random);
    }
    int size = random.nextInt(6);
    if (kind == 1) {
      return MapWriter.list(Stream.generate(() -> node(random, depth - 1)).limit(size).toList());
    }
    Map<String, Node> entries = new LinkedHashMap<>();
    for (int i = 0; i < size; i++) {
      entries.putIfAbsent(text(random), node(random, depth - 1));
    }
    List<MapNode.Entry> out = new ArrayList<>();
    entries.forEach((key, value) -> out.add(new MapNode.Entry(key, NOWHERE, value)));
    return new MapNode(NOWHERE, out);
  }

  /** Quoted ones hold any text; the others what a file can hold without quotes. */
  private static Node scalar(Random random) {
    String text = text(random);
    boolean quoted = random.nextInt(3) == 0 || !text.isEmpty() && !YamlScalars.isLiteral(text);
    return new ScalarNode(NOWHERE, text, quoted);
  }

  private static String text(Random random) {
    if (random.nextInt(3) == 0) {
      return WORDS.get(random.nextInt(WORDS.size()));
    }
    // YAML looks for the colon behind a key in so many characters only.
    int size = random.nextInt(100) == 0 ? 600 : random.nextInt(9);
    return Stream.generate(() -> SCRAPS.get(random.nextInt(SCRAPS.size())))
        .limit(size)
        .collect(Collectors.joining());
  }

  @Provide
  Arbitrary<String> texts() {
    return Arbitraries.oneOf(
        Arbitraries.of(WORDS),
        Arbitraries.of(SCRAPS).list().ofMaxSize(8).map(l -> String.join("", l)),
        Arbitraries.strings().ofMaxLength(40),
        Arbitraries.strings().withChars("ab ,:#\n").ofMinLength(900).ofMaxLength(1200));
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
