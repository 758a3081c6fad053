package org.swathbook.catalog.file;

import java.util.Collection;
import java.util.List;
import org.swathbook.catalog.PouringOrder;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.Protection;
import org.swathbook.catalog.ProtectiveItem;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapWriter;

/** Writes a product. */
final class ProductWriter {
  private ProductWriter() {}

  static MapNode write(Product p) {
    EntryWriter entry = new EntryWriter();
    entry.source(KeyPath.ROOT.then("contains"), p.source());
    MapWriter map =
        new MapWriter()
            .put("format", ProductReader.FORMAT)
            .put("name", p.name())
            .put(
                "contains",
                MapWriter.list(p.contents().stream().map(ProductWriter::content).toList()))
            .put("formulation", p.formulation())
            .put("unit", p.spoken().unitText());
    if (!p.step().equals(p.spoken()) || p.sources().containsKey("step")) {
      map.put("step", ExactText.rate(p.step()));
    }
    p.packageSize().ifPresent(q -> map.put("package", ExactText.quantity(q.value(), q.unit())));
    p.label()
        .ifPresent(
            l ->
                map.put(
                    "label",
                    new MapWriter()
                        .put("id", l.id())
                        .put("reviewed", l.reviewed().toString())
                        .node()));
    p.order().ifPresent(o -> map.put("order", order(o)));
    entry.stated(map, "protection", KeyPath.ROOT, p.protection(), ProductWriter::protection);
    if (!p.note().isEmpty()) {
      map.put("note", MapWriter.line(p.note()));
    }
    return map.put("sources", entry.sources(map.node(), p.sources())).node();
  }

  private static MapNode order(PouringOrder order) {
    return new MapWriter()
        .putAll("before", order.before().stream().map(Object::toString).toList())
        .putAll("after", order.after().stream().map(Object::toString).toList())
        .node();
  }

  private static MapNode protection(Protection p) {
    return new MapWriter()
        .putAll("handlers", items(p.handlers()))
        .putAll("mixing", items(p.mixing()))
        .node();
  }

  private static List<String> items(Collection<ProtectiveItem> items) {
    return items.stream().map(ProtectiveItem::spelling).toList();
  }

  private static MapNode content(Product.Content content) {
    return new MapWriter()
        .put("ingredient", content.ingredient().value())
        .put("concentration", content.concentration().written())
        .node();
  }
}
