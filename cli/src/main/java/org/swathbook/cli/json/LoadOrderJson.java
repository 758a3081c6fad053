package org.swathbook.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.swathbook.catalog.TankTerms.Rinse;
import org.swathbook.check.DayLoads;
import org.swathbook.cli.report.LoadOfDay;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.tank.LoadSequence;
import org.swathbook.tank.LoadSequence.Demand;

/** The result of {@code load} with several mixes. */
public final class LoadOrderJson {
  private LoadOrderJson() {}

  /**
   * @param loads of the day, in the order of its jobs
   */
  public static String of(ReportHead head, List<LoadOfDay> loads, DayLoads day) {
    ObjectNode root = Json.document("load-order", head);
    root.put("date", day.jobs().get(0).date().toString());
    root.put("heldKnown", day.held().isPresent());
    root.put("fillings", day.sequence().fillings());
    ArrayNode order = root.putArray("order");
    for (LoadSequence.Stop stop : day.sequence().stops()) {
      ObjectNode node = order.addObject();
      LoadOfDay load = loads.get(stop.load());
      node.put("mix", load.name());
      node.put("field", load.field().id().value());
      node.put("crop", load.field().crop().value());
      node.set("blockedBy", Json.texts(load.blockedBy()));
      node.put("cleanOutBefore", stop.before().map(Rinse::spelling).orElse(null));
      node.set("because", actives(stop, false));
      node.set("becauseUnknown", actives(stop, true));
    }
    return Json.write(root);
  }

  private static ArrayNode actives(LoadSequence.Stop stop, boolean unknown) {
    return Json.texts(
        stop.because().stream()
            .filter(b -> (b.demand() == Demand.UNKNOWN) == unknown)
            .map(LoadSequence.Because::active)
            .toList());
  }
}
