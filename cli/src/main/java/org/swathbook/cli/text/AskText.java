package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.swathbook.catalog.Catalog;
import org.swathbook.rules.Ask;
import org.swathbook.rules.label.LabelConditionRule;

/** What is not known, by the thing it is asked of: what is asked twice of one thing stands once. */
final class AskText {
  /** Rows shown before the rest is only counted. */
  static final int SHOWN = 8;

  private final Map<String, Set<String>> byThing = new LinkedHashMap<>();

  /** Things with a condition of a label, which is read nowhere else: they are never cut off. */
  private final Set<String> ofLabels = new HashSet<>();

  AskText(Catalog catalog, List<Ask> asks) {
    for (Ask a : asks) {
      String thing =
          a.about()
              .ingredient()
              .map(i -> catalog.ingredient(i).name())
              .or(() -> a.about().product().map(p -> catalog.product(p).name()))
              .orElse(a.where());
      byThing.computeIfAbsent(thing, t -> new LinkedHashSet<>()).add(a.what());
      if (LabelConditionRule.isOf(a)) {
        ofLabels.add(thing);
      }
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
    int place = 0;
    int more = 0;
    for (Map.Entry<String, Set<String>> e : byThing.entrySet()) {
      if (place < SHOWN || ofLabels.contains(e.getKey())) {
        out.add(
            new FindingText.Paragraph(
                "- " + e.getKey() + ": " + String.join("; ", e.getValue()), true));
      } else {
        more += e.getValue().size();
      }
      place++;
    }
    if (more > 0) {
      out.add(new FindingText.Paragraph("and " + more + " more – see --json", true));
    }
    return out;
  }
}
