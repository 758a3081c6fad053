package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.ProtectiveItem;
import org.swathbook.tank.ProtectiveEquipment;

/** What people wear who handle a tank, in words. */
final class ProtectionText {
  private ProtectionText() {}

  static List<String> lines(ProtectiveEquipment tank) {
    List<String> out = new ArrayList<>();
    if (!tank.stated().isEmpty()) {
      out.add(
          tank.handlers().isEmpty()
              ? "Protective equipment: none named for all who handle it by the "
                  + labels(tank.stated())
                  + "."
              : "Protective equipment, the strictest of the "
                  + labels(tank.stated())
                  + ": "
                  + words(tank.handlers())
                  + ".");
    }
    if (!tank.mixing().isEmpty()) {
      out.add("Besides, while mixing, loading and cleaning: " + words(tank.mixing()) + ".");
    }
    if (!tank.unknown().isEmpty()) {
      out.add(
          (tank.stated().isEmpty() ? "Protective equipment: NOT" : "NOT")
              + " STATED of "
              + Figures.list(names(tank.unknown()))
              + " - read the "
              + (tank.unknown().size() == 1 ? "label" : "labels")
              + "; the strictest of the tank governs.");
    }
    return out;
  }

  private static String labels(List<ProductId> stated) {
    return (stated.size() == 1 ? "label of " : "labels of ") + Figures.list(names(stated));
  }

  private static List<String> names(List<ProductId> ids) {
    return ids.stream().map(ProductId::value).toList();
  }

  private static String words(Collection<ProtectiveItem> items) {
    return Figures.list(items.stream().map(ProtectiveItem::words).toList());
  }
}
