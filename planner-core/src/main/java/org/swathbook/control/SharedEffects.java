package org.swathbook.control;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Biotype;
import org.swathbook.book.Field;
import org.swathbook.book.SoilSample;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.Weed;
import org.swathbook.catalog.WeedId;
import org.swathbook.growth.Kept;
import org.swathbook.growth.SoilCourse;

/**
 * What doses do that rests on labels, soils and biotypes and on no field's outdoors: computed once
 * for all fields of a book. One of these serves one catalog; several threads may use it, and two
 * may both compute what is not there yet, to the same bits.
 */
public final class SharedEffects {
  /**
   * Tables of so many tanks on so many weeds are kept; the rest is made again, to the same bits.
   */
  private static final int TABLES_KEPT = 40_000;

  /** Fields of one soil mostly come one after the other, each with all its years. */
  private static final int SOILS_KEPT = 200;

  /** All of a field by which labels measure a dose. */
  private record GroundKey(CropId crop, Optional<String> state, List<SoilSample> soils) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof GroundKey o
          && crop.equals(o.crop)
          && state.equals(o.state)
          && soils.equals(o.soils);
    }

    @Override
    public int hashCode() {
      return 31 * (31 * crop.hashCode() + state.hashCode()) + soils.hashCode();
    }
  }

  private record HighKey(IngredientId active, List<String> formulations, Position.Phase phase) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof HighKey o
          && phase == o.phase
          && active.equals(o.active)
          && formulations.equals(o.formulations);
    }

    @Override
    public int hashCode() {
      return 31 * (31 * active.hashCode() + formulations.hashCode()) + phase.hashCode();
    }
  }

  /** What labels measure doses by on one ground. */
  static final class Ground {
    private final Field example;
    private final Map<HighKey, OptionalDouble> highs = new ConcurrentHashMap<>();
    private final Map<IngredientId, Double> soilShares = new ConcurrentHashMap<>();

    private Ground(Field example) {
      this.example = example;
    }

    OptionalDouble high(TankActive active, Position.Phase phase) {
      HighKey key = new HighKey(active.ingredient().id(), active.formulations(), phase);
      OptionalDouble known = highs.get(key);
      if (known == null) {
        known = LabelRates.high(active, example, phase);
        highs.put(key, known);
      }
      return known;
    }

    double soilShare(Ingredient active) {
      Double known = soilShares.get(active.id());
      if (known == null) {
        known = LabelRates.soilShare(active, example);
        soilShares.put(active.id(), known);
      }
      return known;
    }
  }

  /** An active on a weed. */
  private record OnWeed(IngredientId active, WeedId weed) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof OnWeed o && active.equals(o.active) && weed.equals(o.weed);
    }

    @Override
    public int hashCode() {
      return 31 * active.hashCode() + weed.hashCode();
    }
  }

  private record CurveKey(IngredientId active, WeedId weed, Position.Phase phase) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof CurveKey o
          && phase == o.phase
          && active.equals(o.active)
          && weed.equals(o.weed);
    }

    @Override
    public int hashCode() {
      return 31 * (31 * active.hashCode() + weed.hashCode()) + phase.hashCode();
    }
  }

  private record PlainKey(FoliarCurve curve, double shareOfHigh) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof PlainKey o
          && Double.compare(shareOfHigh, o.shareOfHigh) == 0
          && curve.equals(o.curve);
    }

    @Override
    public int hashCode() {
      return 31 * curve.hashCode() + Double.hashCode(shareOfHigh);
    }
  }

  private record WeedKey(WeedId weed, List<Biotype> biotypes) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof WeedKey o && weed.equals(o.weed) && biotypes.equals(o.biotypes);
    }

    @Override
    public int hashCode() {
      return 31 * weed.hashCode() + biotypes.hashCode();
    }
  }

  /** A weed by its biotypes, whatever its number. */
  static final class Stand {
    private final WeedPressure example;

    private Stand(WeedPressure example) {
      this.example = example;
    }
  }

  /** Actives of a tank with what they do to each other. */
  static final class Tank {
    final List<TankActive> actives;
    private final MixInteractions interactions;

    private Tank(List<TankActive> actives, MixInteractions interactions) {
      this.actives = actives;
      this.interactions = interactions;
    }
  }

  /** Control by height class of an active by itself. */
  static final class Plain {
    final double[] byClass;

    private Plain(double[] byClass) {
      this.byClass = byClass;
    }
  }

  private record TableKey(Tank tank, Stand stand, List<Plain> plain, Optional<Site> without) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof TableKey o
          && tank == o.tank
          && stand == o.stand
          && plain.equals(o.plain)
          && without.equals(o.without);
    }

    @Override
    public int hashCode() {
      return 31 * (31 * tank.hashCode() + stand.hashCode())
          + 31 * plain.hashCode()
          + without.hashCode();
    }
  }

  static final Plain NOTHING = new Plain(new double[HeightClasses.COUNT]);

  private final Catalog catalog;
  private final Map<GroundKey, Ground> grounds = new ConcurrentHashMap<>();
  private final Map<WeedKey, Stand> stands = new ConcurrentHashMap<>();
  private final Map<OnWeed, OptionalDouble> fresh = new ConcurrentHashMap<>();
  private final Map<CurveKey, Optional<FoliarCurve>> curves = new ConcurrentHashMap<>();
  private final Kept<Object, Tank> tanks = new Kept<>(TABLES_KEPT);
  private final Kept<PlainKey, Plain> plains = new Kept<>(TABLES_KEPT);
  private final Kept<TableKey, FoliarTable> tables = new Kept<>(TABLES_KEPT);
  private final Kept<SoilCourse, SoilYear> soils = new Kept<>(SOILS_KEPT);

  public SharedEffects(Catalog catalog) {
    this.catalog = catalog;
  }

  Ground ground(Field field) {
    GroundKey key = new GroundKey(field.crop(), field.state(), SoilSample.of(field));
    Ground known = grounds.get(key);
    return known != null ? known : grounds.computeIfAbsent(key, k -> new Ground(field));
  }

  Stand stand(WeedPressure weed) {
    WeedKey key = new WeedKey(weed.weed().id(), weed.biotypes());
    Stand known = stands.get(key);
    return known != null ? known : stands.computeIfAbsent(key, k -> new Stand(weed));
  }

  SoilYear soil(SoilCourse soil) {
    SoilYear known = soils.find(soil);
    return known != null ? known : soils.keep(soil, new SoilYear(soil));
  }

  /**
   * @param key equal for actives that are equal to the last bit
   */
  Tank tank(Object key, List<TankActive> actives) {
    Tank known = tanks.find(key);
    return known != null
        ? known
        : tanks.keep(key, new Tank(actives, new MixInteractions(actives, catalog.interactions())));
  }

  double mostSynergy(List<TankActive> actives, Weed weed) {
    return MixInteractions.mostSynergy(actives, catalog.interactions(), weed);
  }

  OptionalDouble fresh(Ingredient active, Weed weed) {
    OnWeed key = new OnWeed(active.id(), weed.id());
    OptionalDouble known = fresh.get(key);
    if (known == null) {
      known = Responses.fresh(catalog, active, weed);
      fresh.put(key, known);
    }
    return known;
  }

  Optional<FoliarCurve> curve(Ingredient active, Weed weed, Position.Phase phase) {
    CurveKey key = new CurveKey(active.id(), weed.id(), phase);
    Optional<FoliarCurve> known = curves.get(key);
    if (known == null) {
      known = Responses.foliar(catalog, active, weed, phase);
      curves.put(key, known);
    }
    return known;
  }

  Plain plain(FoliarCurve curve, double shareOfHigh) {
    PlainKey key = new PlainKey(curve, shareOfHigh);
    Plain known = plains.find(key);
    return known != null ? known : plains.keep(key, new Plain(curve.table(shareOfHigh)));
  }

  FoliarTable table(Tank tank, Stand stand, List<Plain> plain, Optional<Site> without) {
    TableKey key = new TableKey(tank, stand, plain, without);
    FoliarTable known = tables.find(key);
    if (known != null) {
      return known;
    }
    List<double[]> byClass = new ArrayList<>(plain.size());
    for (Plain p : plain) {
      byClass.add(p.byClass);
    }
    return tables.keep(
        key, FoliarTable.of(stand.example, tank.actives, tank.interactions, byClass, without));
  }
}
