package org.swathbook.catalog.file;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.swathbook.catalog.RateRow;
import org.swathbook.catalog.SoilCondition;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.WeedId;
import org.swathbook.catalog.WeedRate;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
import org.swathbook.measure.Unit;
import org.swathbook.source.ListNode;
import org.swathbook.source.MapReader;
import org.swathbook.source.Node;
import org.swathbook.source.Texts;

/** Reads the rates of a use by soil, and the least ones for certain weeds. */
final class UseRatesReader {
  private final Entry entry;
  private final ActiveRates rates;
  private final Names<WeedId> weeds;

  UseRatesReader(Entry entry, ActiveRates rates, Names<WeedId> weeds) {
    this.entry = entry;
    this.rates = rates;
    this.weeds = weeds;
  }

  /** One rate, or a row a kind of soil. */
  Optional<List<RateRow>> rows(Node node) {
    if (node instanceof ListNode) {
      return entry.rows(node, "- {texture: coarse, rate: …}", this::rateRow);
    }
    return MapReader.scalar(node, rates.range(), rates.example(), entry.problems())
        .map(r -> List.of(new RateRow(SoilCondition.ALWAYS, Optional.of(r))));
  }

  private Optional<RateRow> rateRow(MapReader m) {
    SoilCondition when = SoilConditions.read(m);
    boolean refused = m.find("refused", Texts::yesNo, "yes").orElse(false);
    if (refused == m.has("rate")) {
      m.problems().add(m.mark(), "a row either states a rate or refuses", "write one of the two");
      return Optional.empty();
    }
    return Optional.of(
        new RateRow(
            when, refused ? Optional.empty() : m.find("rate", rates.range(), rates.example())));
  }

  /** The least rates for certain weeds, held against what the use allows at all. */
  Stated<List<WeedRate>> ofWeeds(MapReader m, Place place, Stated<List<RateRow>> rateRows) {
    Stated<List<WeedRate>> read =
        entry.stated(
            m,
            "weedRate",
            place,
            "least rate for a weed",
            n ->
                entry.rows(
                    n,
                    "- {weeds: [ZEAMX], upTo: 12 in, least: " + rates.example() + "}",
                    this::weedRate));
    OptionalDouble most =
        rateRows.find().orElse(List.of()).stream()
            .flatMap(r -> r.rates().stream())
            .mapToDouble(r -> r.high().kgPerHa())
            .max();
    List<WeedRate> before = new ArrayList<>();
    for (WeedRate row : read.find().orElse(List.of())) {
      if (most.isPresent() && Quantity.exceeds(row.least().kgPerHa(), most.getAsDouble())) {
        m.problems()
            .add(
                m.mark("weedRate"),
                "the least rate of " + row.least() + " for a weed is above all that the use allows",
                "check which of 'weedRate' and 'rate' is wrong");
      }
      if (before.stream().anyMatch(b -> covers(b, row))) {
        m.problems()
            .add(
                m.mark("weedRate"),
                "no plant can reach a row of it, since a row before covers the same weed and height",
                "write the rows of a weed from the lowest 'upTo' to the highest");
      }
      before.add(row);
    }
    return read;
  }

  private static boolean covers(WeedRate first, WeedRate later) {
    return first.weeds().containsAll(later.weeds())
        && (first.upToCm().isEmpty()
            || later.upToCm().isPresent()
                && !Quantity.exceeds(later.upToCm().getAsDouble(), first.upToCm().getAsDouble()));
  }

  private Optional<WeedRate> weedRate(MapReader m) {
    m.require("weeds", "[ZEAMX]");
    Set<WeedId> named = new LinkedHashSet<>(m.findAll("weeds", weeds.known(), "ZEAMX"));
    return Optional.of(
        new WeedRate(
            named,
            m.find("upTo", Texts.in(Unit.CENTIMETRE, "12 in"), "12 in")
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty()),
            m.require("least", rates.one(), rates.example(), Rate.lbPerAcre(0, rates.basis()))));
  }
}
