package org.swathbook.tank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DirectedAcyclicGraph;
import org.jgrapht.graph.GraphCycleProhibitedException;
import org.jgrapht.traverse.TopologicalOrderIterator;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.PouringOrder;
import org.swathbook.catalog.Product;

/**
 * The guides' order, changed as little as the labels in a tank ask for: of what may come next by
 * the labels, always what the guides put first. What one label says and those before it leave no
 * room for is left out, and told.
 *
 * @param said what labels say of their place, as sentences without an end
 * @param againstGuides those of them that most guides have the other way round
 * @param circles what is left out, each with what it would close a circle with
 */
record LabelOrder(
    List<MixingOrder.Poured> order,
    List<String> said,
    List<String> againstGuides,
    List<String> circles) {

  /** What a label says: the one before the other. */
  private record Wish(Product label, int first, int later) {}

  LabelOrder {
    order = List.copyOf(order);
    said = List.copyOf(said);
    againstGuides = List.copyOf(againstGuides);
    circles = List.copyOf(circles);
  }

  /** Of things in the order of the guides. */
  static LabelOrder of(List<MixingOrder.Poured> guided) {
    List<Wish> wishes = wishes(guided);
    if (wishes.isEmpty()) {
      return new LabelOrder(guided, List.of(), List.of(), List.of());
    }
    DirectedAcyclicGraph<Integer, DefaultEdge> before =
        new DirectedAcyclicGraph<>(DefaultEdge.class);
    for (int i = 0; i < guided.size(); i++) {
      before.addVertex(i);
    }
    TreeSet<String> said = new TreeSet<>();
    TreeSet<String> againstGuides = new TreeSet<>();
    TreeSet<String> circles = new TreeSet<>();
    for (Wish w : wishes) {
      String words =
          "the label of "
              + w.label().name()
              + " puts "
              + guided.get(w.first()).name()
              + " before "
              + guided.get(w.later()).name();
      said.add(words);
      try {
        before.addEdge(w.first(), w.later());
        if (PartOrder.place(guided.get(w.first()).part())
            > PartOrder.place(guided.get(w.later()).part())) {
          againstGuides.add(words);
        }
      } catch (GraphCycleProhibitedException circle) {
        circles.add(words + ", and other labels in the tank " + path(before, guided, w));
      }
    }
    List<MixingOrder.Poured> order = new ArrayList<>();
    new TopologicalOrderIterator<>(before, Comparator.<Integer>naturalOrder())
        .forEachRemaining(i -> order.add(guided.get(i)));
    return new LabelOrder(
        order, List.copyOf(said), List.copyOf(againstGuides), List.copyOf(circles));
  }

  /** How the labels before it have the two the other way round. */
  private static String path(
      DirectedAcyclicGraph<Integer, DefaultEdge> before,
      List<MixingOrder.Poured> guided,
      Wish wish) {
    List<String> names =
        DijkstraShortestPath.findPathBetween(before, wish.later(), wish.first())
            .getVertexList()
            .stream()
            .map(i -> guided.get(i).name())
            .toList();
    return String.join(" before ", names);
  }

  /** In the order of the guides, so that the same tank has the same order however it is written. */
  private static List<Wish> wishes(List<MixingOrder.Poured> guided) {
    List<Wish> out = new ArrayList<>();
    for (int i = 0; i < guided.size(); i++) {
      MixingOrder.Poured own = guided.get(i);
      if (own.product().flatMap(Product::order).isEmpty()) {
        continue;
      }
      Product product = own.product().orElseThrow();
      PouringOrder order = product.order().orElseThrow();
      for (int other = 0; other < guided.size(); other++) {
        MixingOrder.Poured it = guided.get(other);
        if (other == i || it.name().equals(own.name())) {
          continue;
        }
        if (order.before().stream().anyMatch(p -> isMeant(p, it))) {
          out.add(new Wish(product, i, other));
        }
        if (order.after().stream().anyMatch(p -> isMeant(p, it))) {
          out.add(new Wish(product, other, i));
        }
      }
    }
    return out;
  }

  private static boolean isMeant(PouringOrder.Poured named, MixingOrder.Poured it) {
    if (named instanceof PouringOrder.Poured.Formulation f) {
      return it.product().isPresent() && isSame(f.code(), it.formulation());
    }
    if (named instanceof PouringOrder.Poured.OfKind k) {
      return it.product().isEmpty()
          && AdjuvantKind.find(it.name()).filter(k.kind()::equals).isPresent();
    }
    return named instanceof PouringOrder.Poured.Holding h
        && it.product().flatMap(p -> p.find(h.ingredient())).isPresent();
  }

  /** Dispersible granules have several codes for one thing. */
  private static boolean isSame(String code, String other) {
    return code.equals(other)
        || TankPart.ofFormulation(code) == TankPart.GRANULE
            && TankPart.ofFormulation(other) == TankPart.GRANULE;
  }
}
