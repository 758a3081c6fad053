package org.swathbook.source;

import java.nio.charset.StandardCharsets;
import java.util.List;

/** Short ways to read a text in a test, and to see the problems it gives. */
final class Reading {
  private Reading() {}

  static Node yaml(String text) {
    return new YamlReader().read("x.yaml", bytes(text));
  }

  static MapReader map(String text, Problems problems) {
    return new MapReader(new YamlReader().readMap("x.yaml", bytes(text)), problems);
  }

  /** The problems of a YAML text, as they are shown. */
  static List<String> yamlProblems(String text) {
    return yamlProblems(bytes(text));
  }

  static List<String> yamlProblems(byte[] content) {
    try {
      new YamlReader().readMap("x.yaml", content);
      return List.of();
    } catch (ProblemsException e) {
      return e.report();
    }
  }

  static CsvTable csv(String text, Problems problems) {
    return csv(bytes(text), problems);
  }

  static CsvTable csv(byte[] content, Problems problems) {
    return new CsvReader()
        .read(
            "w.csv",
            content,
            CsvColumns.required("field", "weed").andOptional("density"),
            problems);
  }

  static List<String> csvProblems(byte[] content) {
    Problems problems = new Problems();
    csv(content, problems);
    return problems.report();
  }

  static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
