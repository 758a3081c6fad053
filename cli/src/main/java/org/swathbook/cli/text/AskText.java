package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.swathbook.catalog.Catalog;
import org.swathbook.rules.Ask;

/** What is not known, by the thing it is asked of: what is asked twice of one thing stands once. */
final class AskText {
  /** Rows shown before the rest is only counted. */
  static final int SHOWN = 8;

  private final Map<String, Set<String>> byThing = new LinkedHashMap<>();

  AskText(Catalog catalog, List<Ask> asks) {
    for (Ask a : asks) {
      String thing =
          a.about()
              .ingredient()
              .map(i -> catalog.ingredient(i).name())
              .or(() -> a.about().product().map(p -> catalog.product(p).name()))
              .orElse(a.where());
      byThing.computeIfAbsent(thing, t -> new LinkedHashSet<>()).add(a.what());
    }
  }

  int count() {
    return byThing.values().stream().mapToInt(Set::size).sum();
  }

  List<FindingText.Paragraph> paragraphs() {
    List<FindingText.Paragraph> out = new ArrayList<>();
    out.add(
        new FindingText.Paragraph(
            Figures.counted(count(), "thing", "things") + " to look up:", false));
    byThing.entrySet().stream()
        .limit(SHOWN)
        .forEach(
            e ->
                out.add(
                    new FindingText.Paragraph(
                        "- " + e.getKey() + ": " + String.join("; ", e.getValue()), true)));
    int more = byThing.values().stream().skip(SHOWN).mapToInt(Set::size).sum();
    if (more > 0) {
      out.add(new FindingText.Paragraph("and " + more + " more – see --json", true));
    }
    return out;
  }
}
