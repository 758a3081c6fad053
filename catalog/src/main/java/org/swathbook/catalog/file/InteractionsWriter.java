package org.swathbook.catalog.file;

import java.util.List;
import java.util.Locale;
import org.swathbook.catalog.Interaction;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.Unit;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapWriter;
import org.swathbook.source.Node;

/** Writes what partners of one tank do to each other. */
final class InteractionsWriter {
  private InteractionsWriter() {}

  static MapNode write(List<Interaction> interactions) {
    return new MapWriter()
        .put("format", InteractionReader.FORMAT)
        .put(
            "interactions",
            MapWriter.list(interactions.stream().map(InteractionsWriter::one).toList()))
        .node();
  }

  private static MapNode one(Interaction i) {
    boolean synergy = i.kind() == Interaction.Kind.SYNERGY;
    MapWriter map =
        new MapWriter()
            .put("between", MapWriter.list(List.of(side(i.one()), side(i.other()))))
            .put(
                "on",
                i.kindOfWeed()
                    .<Node>map(k -> MapWriter.scalar(k.name().toLowerCase(Locale.ROOT)))
                    .orElseGet(() -> weeds(i)));
    if (!synergy || !i.affects().equals(i.one())) {
      map.put("affects", side(i.affects()));
    }
    map.put("kind", i.kind().name().toLowerCase(Locale.ROOT));
    i.size().ifPresent(s -> map.put(synergy ? "survivors" : "loses", size(s)));
    i.unless()
        .ifPresent(
            u ->
                map.put(
                    "unless", u.ingredient() + " at " + ExactText.rate(u.atLeast()) + " or more"));
    if (!i.remedy().isEmpty()) {
      map.put("remedy", MapWriter.line(i.remedy()));
    }
    if (!i.source().equals(Source.NOT_GIVEN)) {
      map.put("source", i.source().text());
    }
    return map.node();
  }

  private static Node weeds(Interaction i) {
    return MapWriter.list(i.weeds().stream().map(WeedId::value).map(MapWriter::scalar).toList());
  }

  private static String size(Interaction.Shares shares) {
    String high = ExactText.share(shares.high());
    return shares.low() == shares.high()
        ? high
        : ExactText.share(shares.low()).replace(Unit.PERCENT.symbol(), "").strip() + "-" + high;
  }

  private static Node side(Interaction.Side side) {
    if (side.ingredient().isPresent()) {
      return MapWriter.scalar(side.ingredient().get().value());
    }
    MapWriter map = new MapWriter().put("site", side.site().orElseThrow().toString());
    side.with().ifPresent(w -> map.put("with", new MapWriter().put("site", w.toString()).node()));
    return map.node();
  }
}
