package org.swathbook.book.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.swathbook.book.HouseRules;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.MeasureException;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapReader;
import org.swathbook.source.Problems;
import org.swathbook.source.ScalarNode;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/** Reads the house rules; what a book leaves out stays as in {@link HouseRules#DEFAULTS}. */
final class HouseRulesReader {
  private static final List<String> MONTHS =
      List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

  private final Names names;
  private final Problems problems;

  HouseRulesReader(Names names, Problems problems) {
    this.names = names;
    this.problems = problems;
  }

  HouseRules read(Optional<MapNode> node) {
    HouseRules d = HouseRules.DEFAULTS;
    if (node.isEmpty()) {
      return d;
    }
    MapReader all = new MapReader(node.get(), problems);
    Optional<MapReader> soilSites = all.findMap("minSoilSites", "{first: 2, overlap: 1}");
    Optional<MapReader> exposed = all.findMap("maxExposedEmergence", "{AMAPA: 5 %, others: 10 %}");
    Optional<MapReader> suitable = all.findMap("suitableDay", "{rain: < 0.1 in, queue: 3 days}");
    Optional<MapReader> share =
        suitable.flatMap(s -> s.findMap("share", "{apr: 50 %, other: 50 %}"));
    Optional<MapReader> miss =
        all.findMap("missShare", "{foliar: 1 %, underCanopy: 3 %, soil: 2 %}");
    double[] wind = in(all, "wind", Parsers::windMph, "3-10 mph", windOf(d));
    HouseRules read =
        new HouseRules(
            share(all, "effectiveSite", d.effectiveSite()),
            share(all, "effectiveSoilSite", d.effectiveSoilSite()),
            whole(all, "minFoliarSites", 0, 9, d.minFoliarSites()),
            in(soilSites, "first", Parsers.whole(0, 9), "2", d.minSoilSitesFirst()),
            in(soilSites, "overlap", Parsers.whole(0, 9), "1", d.minSoilSitesOverlap()),
            share(all, "layerThreshold", d.layerThreshold()),
            in(all, "minLayerOverlap", Texts::days, "7 days", d.minLayerOverlapDays()),
            exposed(exposed, d.maxExposedEmergence()),
            in(exposed, "others", Texts::share, "10 %", d.maxExposedEmergenceOthers()),
            share(all, "seasonControl", d.seasonControl()),
            share(all, "oneSiteGone", d.oneSiteGone()),
            share(all, "otherControl", d.otherControl()),
            in(all, "maxSurvivors", Parsers::perAcre, "200 /acre", d.maxSurvivorsPerAcre()),
            share(all, "windowConfidence", d.windowConfidence()),
            share(all, "sizePercentile", d.sizePercentile()),
            in(suitable, "rain", Parsers::belowRainMm, "< 0.1 in", d.suitableRainMm()),
            in(
                suitable,
                "rainDayBefore",
                Parsers::belowRainMm,
                "< 0.5 in",
                d.suitableRainBeforeMm()),
            shares(share, d.suitableShareByMonth()),
            in(share, "other", Texts::share, "50 %", d.suitableShareOther()),
            in(suitable, "queue", Texts::days, "3 days", d.queueDays()),
            in(miss, "foliar", Texts::share, "1 %", d.missFoliar()),
            in(miss, "underCanopy", Texts::share, "3 %", d.missUnderCanopy()),
            in(miss, "soil", Texts::share, "2 %", d.missSoil()),
            in(all, "catalogAge", Parsers::months, "18 months", d.catalogAgeMonths()),
            whole(all, "maxPasses", 1, 9, d.maxPasses()),
            whole(all, "maxProducts", 1, 9, d.maxProducts()),
            in(all, "dateStep", HouseRulesReader::step, "3 days", d.dateStepDays()),
            whole(all, "minDaysBetweenPasses", 0, 99, d.minDaysBetweenPasses()),
            wind[0],
            wind[1]);
    all.done();
    soilSites.ifPresent(MapReader::done);
    suitable.ifPresent(MapReader::done);
    share.ifPresent(MapReader::done);
    miss.ifPresent(MapReader::done);
    return read;
  }

  private static double[] windOf(HouseRules rules) {
    return new double[] {rules.windMinMph(), rules.windMaxMph()};
  }

  private static int step(String text) {
    int days = Texts.days(text);
    if (days < 1 || days > 30) {
      throw new MeasureException("'" + text + "' is out of range; write 1 to 30 days");
    }
    return days;
  }

  private static double share(MapReader in, String key, double otherwise) {
    return in(in, key, Texts::share, "80 %", otherwise);
  }

  private static int whole(MapReader in, String key, int least, int most, int otherwise) {
    return in(in, key, Parsers.whole(least, most), Integer.toString(otherwise), otherwise);
  }

  private static <T> T in(
      MapReader in, String key, TextParser<T> parser, String example, T otherwise) {
    return in.find(key, parser, example).orElse(otherwise);
  }

  private static <T> T in(
      Optional<MapReader> in, String key, TextParser<T> parser, String example, T otherwise) {
    return in.flatMap(m -> m.find(key, parser, example)).orElse(otherwise);
  }

  /** Weeds by any name, on top of the defaults. */
  private Map<WeedId, Double> exposed(Optional<MapReader> map, Map<WeedId, Double> defaults) {
    Map<WeedId, Double> out = new LinkedHashMap<>(defaults);
    for (MapNode.Entry e : entries(map)) {
      if (!e.key().equals("others")) {
        Optional<WeedId> weed =
            MapReader.scalar(
                new ScalarNode(e.keyMark(), e.key(), false),
                t -> names.weed(t).id(),
                "AMAPA",
                problems);
        Optional<Double> share = MapReader.scalar(e.value(), Texts::share, "5 %", problems);
        if (weed.isPresent() && share.isPresent()) {
          out.put(weed.get(), share.get());
        }
      }
    }
    return out;
  }

  private Map<Integer, Double> shares(Optional<MapReader> map, Map<Integer, Double> defaults) {
    Map<Integer, Double> out = new LinkedHashMap<>(defaults);
    for (int month = 1; month <= 12; month++) {
      String key = MONTHS.get(month - 1);
      int number = month;
      map.flatMap(m -> m.find(key, Texts::share, "50 %"))
          .ifPresent(share -> out.put(number, share));
    }
    return out;
  }

  private static List<MapNode.Entry> entries(Optional<MapReader> map) {
    return map.map(m -> m.node().entries()).orElse(List.of());
  }
}
