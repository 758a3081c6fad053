package org.swathbook.control;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Biotype;
import org.swathbook.book.Resistance;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Residual;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.Weed;
import org.swathbook.growth.Kept;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Mix;

/**
 * All that doses do to the weeds of one field, computed once and kept. Safe for several threads:
 * two may both compute what is not there yet, to the same bits. A long journal has a field's
 * effects made for each of its seasons, so what is asked for makes no closures. Whoever shows,
 * checks or searches takes the effects from here, so a number is the same everywhere to the last
 * bit.
 */
public final class Effects {

  private record FoliarKey(ActiveKey active, Position.Phase phase, int weed) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof FoliarKey o
          && active.equals(o.active)
          && phase == o.phase
          && weed == o.weed;
    }

    @Override
    public int hashCode() {
      return 31 * (31 * active.hashCode() + phase.hashCode()) + weed;
    }
  }

  private record SoilKey(IngredientId active, long rate, int year, int day) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof SoilKey o
          && active.equals(o.active)
          && rate == o.rate
          && year == o.year
          && day == o.day;
    }

    @Override
    public int hashCode() {
      return 31 * (31 * (31 * active.hashCode() + Long.hashCode(rate)) + year) + day;
    }
  }

  private record ActiveKey(IngredientId active, long rate, List<String> formulations) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof ActiveKey o
          && active.equals(o.active)
          && rate == o.rate
          && formulations.equals(o.formulations);
    }

    @Override
    public int hashCode() {
      return 31 * (31 * active.hashCode() + Long.hashCode(rate)) + formulations.hashCode();
    }
  }

  /** Tables of so many tanks are kept. */
  private static final int TANKS_KEPT = 4096;

  private final SharedEffects shared;
  private final SharedEffects.Ground ground;
  private final List<SharedEffects.Stand> stands;
  private final TraceSet traces;
  private final List<SoilYear> years;
  private final Kept<List<ActiveKey>, MixEffect> mixes = new Kept<>(TANKS_KEPT);
  private final Map<FoliarKey, Optional<SharedEffects.Plain>> foliar = new ConcurrentHashMap<>();
  private final Map<SoilKey, List<SoilEffect>> soil = new ConcurrentHashMap<>();
  private final Map<SoilKey, Optional<ResidualCurve>> residual = new ConcurrentHashMap<>();
  private final Map<IngredientId, boolean[]> struck = new ConcurrentHashMap<>();
  private final Map<IngredientId, double[]> felt = new ConcurrentHashMap<>();

  public Effects(Catalog catalog, TraceSet traces) {
    this(new SharedEffects(catalog), traces);
  }

  /**
   * The same for one of many fields.
   *
   * @param shared of the catalog of them all
   */
  public Effects(SharedEffects shared, TraceSet traces) {
    this.shared = shared;
    this.ground = shared.ground(traces.field());
    this.stands = new ArrayList<>();
    for (WeedPressure w : traces.weeds()) {
      stands.add(shared.stand(w));
    }
    this.traces = traces;
    this.years = new ArrayList<>();
    for (SeasonTrace year : traces.years()) {
      years.add(shared.soil(year.soil()));
    }
  }

  public TraceSet traces() {
    return traces;
  }

  public MixEffect of(Mix mix) {
    List<TankActive> actives = TankActive.of(mix);
    List<ActiveKey> keys = new ArrayList<>(actives.size());
    for (TankActive a : actives) {
      keys.add(key(a));
    }
    List<ActiveKey> key = List.copyOf(keys);
    MixEffect known = mixes.find(key);
    return known != null ? known : mixes.keep(key, new MixEffect(this, shared.tank(key, actives)));
  }

  private static ActiveKey key(TankActive a) {
    return new ActiveKey(a.ingredient().id(), bits(a), a.formulations());
  }

  private static long bits(TankActive active) {
    return Double.doubleToLongBits(active.kgPerHa());
  }

  private Weed weed(int weed) {
    return traces.weeds().get(weed).weed();
  }

  /** Of each weed, whether a listed or suspected resistance, at any share, is to the active. */
  boolean[] struck(Ingredient active) {
    boolean[] known = struck.get(active.id());
    if (known == null) {
      known = new boolean[traces.weeds().size()];
      for (int w = 0; w < known.length; w++) {
        for (Resistance r : traces.weeds().get(w).listed()) {
          known[w] |= r.concerns(active);
        }
      }
      struck.put(active.id(), known);
    }
    return known;
  }

  /** Of each weed, the share of the control through leaves that its biotypes feel by share. */
  double[] felt(Ingredient active) {
    double[] known = felt.get(active.id());
    if (known == null) {
      known = new double[traces.weeds().size()];
      for (int w = 0; w < known.length; w++) {
        WeedPressure p = traces.weeds().get(w);
        double sum = 0;
        for (Biotype b : p.biotypes()) {
          sum += b.share() * ResistanceFactors.foliar(p.weed(), b, active);
        }
        known[w] = Math.min(1, sum);
      }
      felt.put(active.id(), known);
    }
    return known;
  }

  /**
   * By how much the partners of any tank can raise what these actives do together on a weed: of the
   * joint survival a natural logarithm, negated; 0 when no synergy may be theirs.
   */
  public double mostSynergy(List<TankActive> actives, int weed) {
    return shared.mostSynergy(actives, weed(weed));
  }

  OptionalDouble fresh(Ingredient active, int weed) {
    return shared.fresh(active, weed(weed));
  }

  /** Control through leaves by height class of an active by itself; empty when not known. */
  Optional<SharedEffects.Plain> foliar(TankActive active, int weed, Position.Phase phase) {
    FoliarKey key = new FoliarKey(key(active), phase, weed);
    Optional<SharedEffects.Plain> known = foliar.get(key);
    if (known == null) {
      known = plain(active, weed, phase);
      foliar.put(key, known);
    }
    return known;
  }

  private Optional<SharedEffects.Plain> plain(TankActive active, int weed, Position.Phase phase) {
    Optional<FoliarCurve> curve = shared.curve(active.ingredient(), weed(weed), phase);
    if (curve.isPresent() && curve.get().emax() == 0) {
      return Optional.of(SharedEffects.NOTHING);
    }
    OptionalDouble high = ground.high(active, phase);
    return curve.isPresent() && high.isPresent() && high.getAsDouble() > 0
        ? Optional.of(shared.plain(curve.get(), active.kgPerHa() / high.getAsDouble()))
        : Optional.empty();
  }

  /** What a tank does through the leaves of a weed in a phase. */
  FoliarTable table(
      SharedEffects.Tank tank, int weed, Position.Phase phase, Optional<Site> without) {
    List<SharedEffects.Plain> plain = new ArrayList<>();
    for (TankActive a : tank.actives) {
      plain.add(foliar(a, weed, phase).orElse(SharedEffects.NOTHING));
    }
    return shared.table(tank, stands.get(weed), List.copyOf(plain), without);
  }

  /** The course of an active in the soil; empty for one without soil activity. */
  Optional<ResidualCurve> residual(TankActive active, int year, int day) {
    return residual(
        new SoilKey(active.ingredient().id(), bits(active), year, day), active, year, day);
  }

  private Optional<ResidualCurve> residual(SoilKey key, TankActive active, int year, int day) {
    Optional<ResidualCurve> known = residual.get(key);
    if (known == null) {
      known = curve(active, year, day);
      residual.put(key, known);
    }
    return known;
  }

  private Optional<ResidualCurve> curve(TankActive active, int year, int day) {
    Ingredient i = active.ingredient();
    double share = ground.soilShare(i);
    boolean leaches = i.site().number() != 3 && Responses.isCoarse(traces.field());
    Optional<Residual> stated = i.residual().find();
    return stated.isPresent()
        ? Optional.of(
            ResidualCurve.of(
                traces.years().get(year),
                years.get(year),
                stated.get(),
                active.kgPerHa() / share,
                leaches,
                day))
        : Optional.empty();
  }

  /** On each weed; empty for an active without soil activity. */
  List<SoilEffect> soil(TankActive active, int year, int day) {
    SoilKey key = new SoilKey(active.ingredient().id(), bits(active), year, day);
    List<SoilEffect> known = soil.get(key);
    if (known == null) {
      Optional<ResidualCurve> curve = residual(key, active, year, day);
      known = curve.isPresent() ? onWeeds(active.ingredient(), curve.get(), year) : List.of();
      soil.put(key, known);
    }
    return known;
  }

  private List<SoilEffect> onWeeds(Ingredient active, ResidualCurve curve, int year) {
    SeasonTrace trace = traces.years().get(year);
    List<SoilEffect> out = new ArrayList<>();
    for (int w = 0; w < trace.weedCount(); w++) {
      double fresh = fresh(active, w).orElse(0);
      out.add(
          fresh > 0
              ? SoilEffect.of(
                  curve,
                  fresh,
                  SoilEffect.reachesBack(active.site().number()),
                  trace,
                  trace.cohorts(w))
              : SoilEffect.NONE);
    }
    return List.copyOf(out);
  }
}
