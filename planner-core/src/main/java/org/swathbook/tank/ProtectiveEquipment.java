package org.swathbook.tank;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.Protection;
import org.swathbook.catalog.ProtectiveItem;
import org.swathbook.program.Dose;

/**
 * What people wear who handle a tank: of every part of the body the most protective item that any
 * of its labels names.
 *
 * @param handlers whoever mixes, loads, sprays or cleans
 * @param mixing what goes beyond that while mixing, loading and cleaning
 * @param stated products whose label is known to the catalog, in the order of the mix
 * @param unknown products whose label is not: theirs may ask for more
 */
public record ProtectiveEquipment(
    Set<ProtectiveItem> handlers,
    Set<ProtectiveItem> mixing,
    List<ProductId> stated,
    List<ProductId> unknown) {

  public ProtectiveEquipment {
    stated = List.copyOf(stated);
    unknown = List.copyOf(unknown);
  }

  public static ProtectiveEquipment of(Collection<Dose> doses) {
    List<ProtectiveItem> handlers = new ArrayList<>();
    List<ProtectiveItem> mixing = new ArrayList<>();
    Set<ProductId> stated = new LinkedHashSet<>();
    Set<ProductId> unknown = new LinkedHashSet<>();
    for (Dose dose : doses) {
      Product product = dose.product();
      (product.protection().isUnknown() ? unknown : stated).add(product.id());
      Optional<Protection> said = product.protection().find();
      said.ifPresent(p -> handlers.addAll(p.handlers()));
      said.ifPresent(p -> mixing.addAll(p.mixing()));
    }
    Set<ProtectiveItem> always = ProtectiveItem.strictest(handlers);
    mixing.addAll(handlers);
    Set<ProtectiveItem> more = new TreeSet<>(ProtectiveItem.strictest(mixing));
    more.removeAll(always);
    return new ProtectiveEquipment(
        always, new LinkedHashSet<>(more), new ArrayList<>(stated), new ArrayList<>(unknown));
  }
}
