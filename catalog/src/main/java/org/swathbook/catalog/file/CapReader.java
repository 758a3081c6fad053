package org.swathbook.catalog.file;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Cap;
import org.swathbook.catalog.Use;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
import org.swathbook.measure.RateRange;
import org.swathbook.source.MapReader;
import org.swathbook.source.Node;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/** Reads how much of an active a season or a year may have. */
final class CapReader {
  private static final TextParser<Cap.CapPeriod> PERIOD =
      Texts.oneOf(Cap.CapPeriod.values(), p -> p.spelling().replace(' ', '-'));

  private final Entry entry;
  private final ActiveRates rates;

  CapReader(Entry entry, ActiveRates rates) {
    this.entry = entry;
    this.rates = rates;
  }

  Optional<List<Cap>> read(Node node) {
    return entry.rows(node, "cap: {amount: " + rates.example() + ", per: season}", this::cap);
  }

  private Optional<Cap> cap(MapReader m) {
    return Optional.of(
        new Cap(
            m.require("amount", rates.one(), rates.example(), Rate.lbPerAcre(0, rates.basis())),
            m.require("per", PERIOD, "season", Cap.CapPeriod.SEASON),
            new LinkedHashSet<>(m.findAll("counts", UseReader.POSITION, "post"))));
  }

  /** No cap may lie below what the use allows at once. */
  void check(MapReader m, Use use) {
    if (!entry.isSound()) {
      return;
    }
    Optional<Rate> highest =
        use.rates().find().orElse(List.of()).stream()
            .flatMap(r -> r.rates().stream())
            .map(RateRange::high)
            .max(Comparator.comparingDouble(Rate::kgPerHa));
    if (highest.isEmpty()) {
      return;
    }
    for (Cap cap : use.caps().find().orElse(List.of())) {
      if (cap.counts(use.positions())
          && Quantity.exceeds(highest.get().kgPerHa(), cap.amount().kgPerHa())) {
        m.problems()
            .add(
                m.mark("cap"),
                "the cap of "
                    + cap.amount()
                    + " lies below the highest single rate of "
                    + highest.get(),
                "check which of the two is wrong");
      }
    }
  }
}
