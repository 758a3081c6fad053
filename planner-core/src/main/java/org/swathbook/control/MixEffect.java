package org.swathbook.control;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Site;

/**
 * What one tank does to the weeds of one field: its actives in canonical order, and the tables of
 * what it does through leaves by phase. Made by {@link Effects}, which keeps it.
 */
public final class MixEffect {

  private static final List<Position.Phase> PHASES = List.of(Position.Phase.values());

  private record Key(Position.Phase phase, int weed, int site) {}

  private final Effects effects;
  private final SharedEffects.Tank tank;
  private final List<TankActive> actives;
  private final OptionalDouble[][] fresh;
  private final Map<Key, FoliarTable> without = new ConcurrentHashMap<>();

  /**
   * Of the whole tank by phase, then by weed, each made when first asked for. Two threads may both
   * make one: they make the same, and it never changes.
   */
  private final Map<Position.Phase, @Nullable FoliarTable[]> whole =
      new EnumMap<>(Position.Phase.class);

  private final boolean[][] struck;
  private final double[][] felt;

  /** Bit n for site n of any active. */
  private final long sites;

  MixEffect(Effects effects, SharedEffects.Tank tank) {
    this.effects = effects;
    this.tank = tank;
    this.actives = tank.actives;
    int weeds = effects.traces().weeds().size();
    for (Position.Phase phase : PHASES) {
      whole.put(phase, new FoliarTable[weeds]);
    }
    this.struck = new boolean[actives.size()][];
    this.felt = new double[actives.size()][];
    this.fresh = new OptionalDouble[actives.size()][];
    long all = 0;
    for (int a = 0; a < actives.size(); a++) {
      Ingredient active = actives.get(a).ingredient();
      all |= bit(active.site());
      struck[a] = effects.struck(active);
      felt[a] = effects.felt(active);
      fresh[a] = new OptionalDouble[weeds];
      for (int w = 0; w < weeds; w++) {
        fresh[a][w] = effects.fresh(active, w);
      }
    }
    this.sites = all;
  }

  private static long bit(Site site) {
    return 1L << site.number();
  }

  /** By site, then by id. */
  public List<TankActive> actives() {
    return actives;
  }

  /** Fresh control through the soil, 0 to 1; empty when not known. */
  public OptionalDouble fresh(int active, int weed) {
    return fresh[active][weed];
  }

  /** Whether what an active does through the leaves of a weed is known. */
  public boolean foliarKnown(int active, int weed, Position.Phase phase) {
    return effects.foliar(actives.get(active), weed, phase).isPresent();
  }

  /** Whether a listed or suspected resistance of a weed, at any share, is to an active. */
  public boolean isStruck(int active, int weed) {
    return struck[active][weed];
  }

  /** Share of an active's control through leaves that a weed's biotypes feel by their shares. */
  public double feltThroughLeaves(int active, int weed) {
    return felt[active][weed];
  }

  /** Number of weeds of the field. */
  public int weeds() {
    return effects.traces().weeds().size();
  }

  /** Number of biotypes of a weed. */
  public int biotypes(int weed) {
    return effects.traces().weeds().get(weed).biotypes().size();
  }

  /** Whether an active of the tank is of a site. */
  public boolean has(Site site) {
    return (sites & bit(site)) != 0;
  }

  public FoliarTable foliar(int weed, Position.Phase phase) {
    @Nullable FoliarTable[] byWeed = Objects.requireNonNull(whole.get(phase));
    FoliarTable table = byWeed[weed];
    if (table == null) {
      table = table(weed, phase, Optional.empty());
      byWeed[weed] = table;
    }
    return table;
  }

  /**
   * The same with a site that does nothing to plants; the very table of the whole tank where that
   * changes nothing for any biotype of the field, though the site's actives still stand in it.
   */
  public FoliarTable foliar(int weed, Position.Phase phase, Optional<Site> gone) {
    return gone.isPresent() && has(gone.get())
        ? without.computeIfAbsent(
            new Key(phase, weed, gone.get().number()),
            k -> {
              FoliarTable out = table(weed, phase, gone);
              FoliarTable all = foliar(weed, phase);
              return out.doesAsMuchAs(all) ? all : out;
            })
        : foliar(weed, phase);
  }

  private FoliarTable table(int weed, Position.Phase phase, Optional<Site> gone) {
    return effects.table(tank, weed, phase, gone);
  }

  /**
   * What an active does in the soil to each weed when sprayed on a day of a year (its place in the
   * set); empty for one without soil activity.
   */
  public List<SoilEffect> soil(int active, int year, int day) {
    return effects.soil(actives.get(active), year, day);
  }

  /** The course of an active in the soil; empty for one without soil activity. */
  public Optional<ResidualCurve> residual(int active, int year, int day) {
    return effects.residual(actives.get(active), year, day);
  }
}
