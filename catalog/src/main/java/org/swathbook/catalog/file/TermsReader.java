package org.swathbook.catalog.file;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.swathbook.catalog.Foliar;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.Setbacks;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Terms;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Rate;
import org.swathbook.measure.Unit;
import org.swathbook.source.MapNode;
import org.swathbook.source.MapReader;
import org.swathbook.source.Node;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/**
 * Reads what an ingredient or one of its uses says of every spraying. A key that a use does not
 * write keeps what the ingredient says.
 */
final class TermsReader {
  static final List<String> WATERS =
      List.of("runoff", "lake", "stream", "well", "inlet", "sinkhole");

  private final Entry entry;
  private final TankReader tankReader;
  private final DayReader dayReader;

  TermsReader(Entry entry, TankReader tankReader) {
    this.entry = entry;
    this.tankReader = tankReader;
    this.dayReader = new DayReader(entry);
  }

  static Terms unknown() {
    return new Terms(
        Stated.unknown("activity through leaves"),
        Stated.unknown("least spray volume"),
        Stated.unknown("advised spray volume"),
        Stated.unknown("highest spray volume"),
        Stated.unknown("pH of the water"),
        Stated.unknown("liquid fertilizer as carrier over the crop"),
        Stated.unknown("re-entry interval"),
        Stated.unknown("whether it is restricted-use"),
        Stated.unknown("training that is needed"),
        TankReader.unknown(),
        DayReader.unknown(),
        Stated.unknown("distances from water"));
  }

  /** The keys of {@code in} laid over {@code base}. */
  Terms read(MapReader in, Place place, Terms base) {
    Stated<Double> least = base.carrierMinGalPerAcre();
    Stated<Double> advised = base.carrierAdvisedGalPerAcre();
    Stated<Double> most = base.carrierMaxGalPerAcre();
    Stated<Limit> ph = base.waterPh();
    Stated<Boolean> fertilizer = base.fertilizerRefusedOverCrop();
    Optional<Node> carrier = in.find("carrier");
    if (carrier.isPresent() && Entry.isNone(carrier.get())) {
      Source source = entry.source(place.then("carrier"), carrier.get().mark());
      least = Stated.none(source);
      advised = Stated.none(source);
      most = Stated.none(source);
      ph = Stated.none(source);
      fertilizer = Stated.none(source);
    } else if (carrier.isPresent()) {
      Optional<MapReader> keys =
          MapReader.of(carrier.get(), "carrier: {min: 10 gal/acre}", in.problems());
      if (keys.isPresent()) {
        MapReader m = keys.get();
        Place at = place.then("carrier");
        least =
            over(
                least,
                m,
                "min",
                entry.stated(
                    m, "min", at, "least spray volume", TermsReader::gallons, "10 gal/acre"));
        advised =
            over(
                advised,
                m,
                "advised",
                entry.stated(
                    m, "advised", at, "advised spray volume", TermsReader::gallons, "15 gal/acre"));
        most =
            over(
                most,
                m,
                "max",
                entry.stated(
                    m, "max", at, "highest spray volume", TermsReader::gallons, "40 gal/acre"));
        ph =
            over(
                ph,
                m,
                "waterPh",
                entry.stated(
                    m,
                    "waterPh",
                    at,
                    "pH of the water",
                    n -> Limits.read(n, SoilConditions.PH, "5-7", entry.problems())));
        fertilizer =
            over(
                fertilizer,
                m,
                "fertilizer",
                entry.stated(
                    m,
                    "fertilizer",
                    at,
                    "liquid fertilizer as carrier over the crop",
                    only("refused after emergence"),
                    "refused after emergence"));
        m.done();
        checkOrder(m, least, advised, most);
      }
    }
    return new Terms(
        over(base.foliar(), in, "foliar", foliar(in, place)),
        least,
        advised,
        most,
        ph,
        fertilizer,
        over(
            base.reentryHours(),
            in,
            "reentry",
            entry.stated(
                in, "reentry", place, "re-entry interval", Texts.in(Unit.HOUR, "12 h"), "12 h")),
        over(
            base.restrictedUse(),
            in,
            "restrictedUse",
            entry.stated(
                in, "restrictedUse", place, "whether it is restricted-use", Texts::yesNo, "no")),
        over(
            base.training(),
            in,
            "training",
            entry.stated(
                in, "training", place, "training that is needed", Texts::text, "paraquat")),
        tankReader.read(in, place, base.tank()),
        dayReader.read(in, place, base.day()),
        over(base.setbacks(), in, "setback", setbacks(in, place)));
  }

  /** What is asked for, then what is advised, then what is the most. */
  private static void checkOrder(
      MapReader m, Stated<Double> least, Stated<Double> advised, Stated<Double> most) {
    double low = least.find().orElse(0.0);
    double middle = advised.find().orElse(low);
    double high = most.find().orElse(Double.POSITIVE_INFINITY);
    if (low > high || middle > high) {
      m.problems()
          .add(
              m.mark(),
              "the highest spray volume lies below another one",
              "write 'min', then 'advised', then 'max', each at least as high as the one before");
    } else if (advised.find().isPresent() && !(middle > low)) {
      m.problems()
          .add(
              m.mark(),
              "the advised spray volume is not above the least",
              "leave 'advised' out, or write 'min' lower");
    }
  }

  private Stated<Foliar> foliar(MapReader in, Place place) {
    return entry.stated(
        in,
        "foliar",
        place,
        "activity through leaves",
        entry.map(
            "foliar: {rainfast: 1 h}",
            m ->
                Optional.of(
                    new Foliar(
                        entry.stated(
                            m,
                            "rainfast",
                            place.then("foliar"),
                            "rain-free time",
                            Texts.in(Unit.HOUR, "1 h"),
                            "1 h")))));
  }

  private Stated<Setbacks> setbacks(MapReader in, Place place) {
    return entry.stated(
        in,
        "setback",
        place,
        "distances from water",
        entry.map("setback: {well: 50 ft}", m -> Optional.of(new Setbacks(distances(m)))));
  }

  private SortedMap<String, Double> distances(MapReader m) {
    SortedMap<String, Double> feet = new TreeMap<>();
    WATERS.forEach(
        w -> m.find(w, Texts.in(Unit.FOOT, "66 ft"), "66 ft").ifPresent(d -> feet.put(w, d)));
    return feet;
  }

  private static double gallons(String text) {
    Rate rate = Rate.parse(text);
    if (!rate.isVolume()) {
      throw new MeasureException("'" + text + "' is no volume; write for example '10 gal/acre'");
    }
    return rate.unit() == Unit.GALLON && rate.area() == Unit.ACRE
        ? rate.amount()
        : Unit.GALLON.fromSi(rate.litresPerHa() / Unit.HECTARE.toSi(1) * Unit.ACRE.toSi(1));
  }

  /** A key whose only value besides {@code none} is one phrase: true when it is written. */
  static TextParser<Boolean> only(String phrase) {
    return text -> {
      if (!text.strip().equals(phrase)) {
        throw new MeasureException(
            "'" + text + "' is not known here; write '" + phrase + "' or 'none'");
      }
      return true;
    };
  }

  /** What was just read where the key is written, else what was there before. */
  static <T> Stated<T> over(Stated<T> base, MapReader in, String key, Stated<T> read) {
    return in.node().find(key).isPresent() ? read : base;
  }

  /** The map under a key, or one without keys when it is not written. */
  static MapReader block(MapReader in, String key, String example) {
    return in.findMap(key, example)
        .orElseGet(() -> new MapReader(new MapNode(in.mark(key), List.of()), in.problems()));
  }
}
