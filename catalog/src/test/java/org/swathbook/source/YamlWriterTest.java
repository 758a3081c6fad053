package org.swathbook.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class YamlWriterTest {

  @Test
  void keysStandOneALineAndShortThingsInBrackets() {
    assertThat(
            YamlWriter.text(
                new MapWriter()
                    .put("name", "corn")
                    .put("residual", new MapWriter().put("at", "0.25 lb/acre").node())
                    .putAll("aliases", List.of("maize", "field corn"))
                    .putAll("none", List.of())
                    .node()))
        .isEqualTo(
            """
            name: corn
            residual: {at: 0.25 lb/acre}
            aliases: [maize, field corn]
            """);
  }

  @Test
  void quotesStandWhereATextNeedsThem() {
    assertThat(
            YamlWriter.text(
                new MapWriter()
                    .put("plain", "86/50 F")
                    .put("comma", "a, b")
                    .put("line", MapWriter.line("a, b"))
                    .put("colon", MapWriter.line("a: b"))
                    .put("sign", MapWriter.line("> 7"))
                    .put("tab", "a\tb")
                    .put("", "")
                    .node()))
        .isEqualTo(
            """
            plain: 86/50 F
            comma: "a, b"
            line: a, b
            colon: "a: b"
            sign: "> 7"
            tab: "a\\u0009b"
            "": ""
            """);
  }

  @Test
  void longRowsOfShortThingsFillLines() {
    List<String> stages = IntStream.range(0, 40).mapToObj(i -> "V" + i).toList();
    String text = YamlWriter.text(new MapWriter().putAll("leafStages", stages).node());
    assertThat(text.lines()).hasSize(2).allMatch(l -> l.length() <= 120);
    assertThat(text).startsWith("leafStages: [V0, V1,").contains(",\n             V2");
  }

  @Test
  void longPartsGetALineEach() {
    String note = "x".repeat(60);
    MapNode row = new MapWriter().put("a", note).put("b", note).node();
    assertThat(YamlWriter.text(new MapWriter().put("rows", MapWriter.list(List.of(row))).node()))
        .isEqualTo("rows:\n  - a: " + note + "\n    b: " + note + "\n");
  }
}
