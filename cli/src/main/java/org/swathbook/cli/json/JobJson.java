package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.SprayJob;

/** A tank that is to be sprayed on a day. */
final class JobJson {
  private JobJson() {}

  static void into(ObjectNode node, SprayJob job) {
    node.put("field", job.field().value());
    node.put("date", job.date().toString());
    node.put("time", job.time().map(Object::toString).orElse(null));
    node.put("method", job.method().spelling());
    PassJson.mix(node.putArray("products"), job.mix().doses());
    ArrayNode adjuvants = node.putArray("adjuvants");
    for (Adjuvant a : job.mix().adjuvants()) {
      adjuvants.addObject().put("kind", a.kind()).put("rate", a.rate());
    }
    node.set("gallonsPerAcre", Json.fixed(job.mix().gallonsPerAcre().orElse(Double.NaN), 1));
    node.put("droplets", job.setup().droplets().map(Object::toString).orElse(null));
  }
}
