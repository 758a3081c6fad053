package org.swathbook.catalog.file;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TankTerms;
import org.swathbook.catalog.Terms;
import org.swathbook.source.ListNode;
import org.swathbook.source.MapWriter;
import org.swathbook.source.Node;

/** Writes the block {@code tank} of an ingredient or a use. */
final class TankWriter {
  private final EntryWriter entry;
  private final TermsWriter over;

  TankWriter(EntryWriter entry, TermsWriter over) {
    this.entry = entry;
    this.over = over;
  }

  void write(MapWriter into, KeyPath at, Terms terms) {
    MapWriter map = new MapWriter();
    KeyPath here = at.then("tank");
    part(terms, TankTerms::adjuvantNeeded)
        .ifPresent(s -> entry.stated(map, "adjuvantNeeded", here, s, TankWriter::needs));
    part(terms, TankTerms::adjuvantRefused)
        .ifPresent(s -> entry.stated(map, "adjuvantRefused", here, s, TankWriter::adjuvants));
    part(terms, TankTerms::partners)
        .ifPresent(s -> entry.stated(map, "partners", here, s, TankWriter::partners));
    part(terms, TankTerms::droplets)
        .ifPresent(s -> entry.stated(map, "droplets", here, s, TankWriter::droplets));
    part(terms, TankTerms::nozzlesListed)
        .ifPresent(s -> entry.only(map, "nozzles", here, s, "listed"));
    part(terms, TankTerms::insecticides)
        .ifPresent(s -> entry.stated(map, "insecticides", here, s, TankWriter::insecticides));
    part(terms, TankTerms::jarTestRefused)
        .ifPresent(s -> entry.only(map, "jarTest", here, s, "refused"));
    part(terms, TankTerms::cleanOut)
        .ifPresent(s -> entry.stated(map, "cleanOut", here, s, TankWriter::cleanOut));
    TermsWriter.putUnlessEmpty(into, "tank", map);
  }

  private <T> Optional<Stated<T>> part(Terms terms, Function<TankTerms, Stated<T>> part) {
    return over.differing(terms, t -> part.apply(t.tank()));
  }

  private static Node needs(List<TankTerms.AdjuvantNeed> needs) {
    return MapWriter.list(needs.stream().map(TankWriter::need).toList());
  }

  private static Node need(TankTerms.AdjuvantNeed need) {
    MapWriter map = new MapWriter();
    if (need.isAtOneRate()) {
      map.put("anyOf", adjuvants(need.anyOf()));
      need.anyOf().stream().findFirst().flatMap(need::rate).ifPresent(r -> map.put("rate", r));
    } else {
      MapWriter each = new MapWriter();
      need.rates().forEach((kind, rate) -> each.put(kind.spelling(), rate));
      map.put("anyOf", each.node());
    }
    return map.put("without", need.refusedWithout() ? "refused" : "warn").node();
  }

  private static ListNode adjuvants(Collection<AdjuvantKind> kinds) {
    return list(kinds);
  }

  private static Node partners(TankTerms.PartnerList partners) {
    return new MapWriter()
        .put(partners.only() ? "only" : "refused", list(partners.listed()))
        .node();
  }

  private static Node droplets(TankTerms.DropletRange range) {
    return new MapWriter()
        .put("from", range.finest().spelling())
        .put("to", range.coarsest().spelling())
        .node();
  }

  private static Node insecticides(TankTerms.InsecticideLimit limit) {
    return new MapWriter()
        .putAll("refused", limit.refused())
        .putAll("caution", limit.caution())
        .put(
            "foliarWait",
            limit.foliarWaitDays().stream()
                .mapToObj(d -> MapWriter.scalar(d + " days"))
                .findFirst())
        .node();
  }

  private static Node cleanOut(TankTerms.CleanOut cleanOut) {
    return new MapWriter()
        .put("rinse", cleanOut.least().spelling())
        .putAll("sensitive", texts(cleanOut.sensitive()))
        .node();
  }

  private static ListNode list(Collection<?> items) {
    return MapWriter.list(texts(items).stream().map(MapWriter::scalar).toList());
  }

  private static List<String> texts(Collection<?> items) {
    return items.stream().map(String::valueOf).toList();
  }
}
