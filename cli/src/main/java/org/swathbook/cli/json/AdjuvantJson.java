package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.swathbook.cli.report.AdjuvantNeed;

/** What passes to come take of an adjuvant: the same keys in an order and in a plan. */
final class AdjuvantJson {
  private AdjuvantJson() {}

  static void into(ObjectNode node, AdjuvantNeed a) {
    node.put("grower", a.grower());
    node.put("adjuvant", a.kind());
    node.set("needed", Json.fixed(a.amount().map(q -> q.value()).orElse(Double.NaN), 3));
    node.put("unit", a.amount().map(q -> q.unit().symbol()).orElse(null));
    node.set("notKnown", Json.texts(a.notKnown()));
  }
}
