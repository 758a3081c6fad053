package org.swathbook.catalog.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Residual;
import org.swathbook.measure.Rate;
import org.swathbook.measure.Unit;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapWriter;
import org.swathbook.source.Node;

/** Writes an active ingredient. */
final class IngredientWriter {
  private static final String NO_LIMIT = "none";

  private final EntryWriter entry = new EntryWriter();

  private IngredientWriter() {}

  static MapNode write(Ingredient ingredient) {
    return new IngredientWriter().keys(ingredient);
  }

  private MapNode keys(Ingredient i) {
    MapWriter map =
        new MapWriter()
            .put("format", IngredientReader.FORMAT)
            .put("name", i.name())
            .putAll("aliases", i.aliases())
            .put("site", i.site().toString())
            .put("family", i.family())
            .put("rateBasis", i.rateBasis().symbol())
            .put("movement", i.movement().name().toLowerCase(Locale.ROOT))
            .put("capGroup", i.capGroup());
    soil(map, i);
    TermsWriter terms = new TermsWriter(entry, Optional.empty());
    terms.foliar(map, KeyPath.ROOT, i.terms());
    UseWriter useWriter = new UseWriter(entry, new TermsWriter(entry, Optional.of(i.terms())));
    List<MapNode> uses = new ArrayList<>();
    i.uses().forEach(u -> uses.add(useWriter.write(uses.size() + 1, u)));
    if (!uses.isEmpty()) {
      map.put("uses", MapWriter.list(uses));
    }
    if (i.usesComplete() || i.sources().containsKey("usesComplete")) {
      map.put("usesComplete", i.usesComplete() ? "yes" : "no");
    }
    new RotationWriter(entry).write(map, i.rotation());
    i.incorporation().ifPresent(text -> map.put("incorporate", MapWriter.line(text)));
    terms.rest(map, KeyPath.ROOT, i.terms());
    return map.put("sources", entry.sources(map.node(), i.sources()))
        .put("reviewed", i.reviewed().toString())
        .node();
  }

  private void soil(MapWriter into, Ingredient i) {
    if (i.residual().isNone()
        && i.halfLifeDays().isNone()
        && i.residual().findSource().equals(i.halfLifeDays().findSource())) {
      into.put("soil", NO_LIMIT);
      i.residual().findSource().ifPresent(s -> entry.source(KeyPath.ROOT.then("soil"), s));
      return;
    }
    MapWriter map = new MapWriter();
    KeyPath at = KeyPath.ROOT.then("soil");
    entry.stated(map, "residual", at, i.residual(), r -> length(r.low(), r.lowDays()));
    i.residual()
        .find()
        .ifPresent(
            r ->
                map.put("residualHigh", length(r.high(), r.highDays()))
                    .put("activatingRain", activatingRain(r)));
    entry.text(map, "halfLife", at, i.halfLifeDays(), d -> ExactText.quantity(d, Unit.DAY));
    TermsWriter.putUnlessEmpty(into, "soil", map);
  }

  private static Node length(Rate at, int days) {
    return new MapWriter().put("at", ExactText.rate(at)).put("days", Integer.toString(days)).node();
  }

  private static String activatingRain(Residual residual) {
    return residual.activatingRainMm() == 0
        ? NO_LIMIT
        : UseWriter.rain(residual.activatingRainMm());
  }
}
