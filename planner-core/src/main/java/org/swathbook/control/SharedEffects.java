package org.swathbook.control;

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

/**
 * What doses do that rests on labels, soils and biotypes and on no field's outdoors: computed once
 * for all fields of a book. One of these serves one catalog; several threads may use it.
 */
public final class SharedEffects {
  /**
   * Tables of so many tanks on so many weeds are kept; the rest is made again, to the same bits.
   */
  private static final int TABLES_KEPT = 40_000;

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

  /** What labels measure doses by on one ground. */
  static final class Ground {
    private final Field example;
    private final Map<List<Object>, OptionalDouble> highs = new ConcurrentHashMap<>();
    private final Map<IngredientId, Double> soilShares = new ConcurrentHashMap<>();

    private Ground(Field example) {
      this.example = example;
    }

    OptionalDouble high(TankActive active, Position.Phase phase) {
      return highs.computeIfAbsent(
          List.of(active.ingredient().id(), active.formulations(), phase),
          k -> LabelRates.high(active, example, phase));
    }

    double soilShare(Ingredient active) {
      return soilShares.computeIfAbsent(active.id(), k -> LabelRates.soilShare(active, example));
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
  private final Map<List<Object>, OptionalDouble> fresh = new ConcurrentHashMap<>();
  private final Map<List<Object>, Optional<FoliarCurve>> curves = new ConcurrentHashMap<>();
  private final Kept<Object, Tank> tanks = new Kept<>(TABLES_KEPT);
  private final Kept<List<Object>, Plain> plains = new Kept<>(TABLES_KEPT);
  private final Kept<TableKey, FoliarTable> tables = new Kept<>(TABLES_KEPT);

  public SharedEffects(Catalog catalog) {
    this.catalog = catalog;
  }

  Ground ground(Field field) {
    return grounds.computeIfAbsent(
        new GroundKey(field.crop(), field.state(), SoilSample.of(field)), k -> new Ground(field));
  }

  Stand stand(WeedPressure weed) {
    return stands.computeIfAbsent(
        new WeedKey(weed.weed().id(), weed.biotypes()), k -> new Stand(weed));
  }

  /**
   * @param key equal for actives that are equal to the last bit
   */
  Tank tank(Object key, List<TankActive> actives) {
    return tanks.get(
        key, k -> new Tank(actives, new MixInteractions(actives, catalog.interactions())));
  }

  OptionalDouble fresh(Ingredient active, Weed weed) {
    return fresh.computeIfAbsent(
        List.of(active.id(), weed.id()), k -> Responses.fresh(catalog, active, weed));
  }

  Optional<FoliarCurve> curve(Ingredient active, Weed weed, Position.Phase phase) {
    return curves.computeIfAbsent(
        List.of(active.id(), weed.id(), phase),
        k -> Responses.foliar(catalog, active, weed, phase));
  }

  Plain plain(FoliarCurve curve, double shareOfHigh) {
    return plains.get(List.of(curve, shareOfHigh), k -> new Plain(curve.table(shareOfHigh)));
  }

  FoliarTable table(Tank tank, Stand stand, List<Plain> plain, Optional<Site> without) {
    return tables.get(
        new TableKey(tank, stand, plain, without),
        k ->
            FoliarTable.of(
                stand.example,
                tank.actives,
                tank.interactions,
                plain.stream().map(p -> p.byClass).toList(),
                without));
  }
}
