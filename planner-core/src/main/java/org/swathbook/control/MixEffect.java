package org.swathbook.control;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Site;

/**
 * What one tank does to the weeds of one field: its actives in canonical order, and the tables of
 * what it does through leaves by phase. Made by {@link Effects}, which keeps it.
 */
public final class MixEffect {

  private record Key(Position.Phase phase, int weed, int without) {}

  private final Effects effects;
  private final List<TankActive> actives;
  private final MixInteractions interactions;
  private final OptionalDouble[][] fresh;
  private final Map<Key, FoliarTable> tables = new ConcurrentHashMap<>();

  MixEffect(Effects effects, List<TankActive> actives) {
    this.effects = effects;
    this.actives = actives;
    this.interactions = new MixInteractions(actives, effects.catalog().interactions());
    int weeds = effects.traces().weeds().size();
    this.fresh = new OptionalDouble[actives.size()][weeds];
    for (int a = 0; a < actives.size(); a++) {
      for (int w = 0; w < weeds; w++) {
        fresh[a][w] = effects.fresh(actives.get(a).ingredient(), w);
      }
    }
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

  public FoliarTable foliar(int weed, Position.Phase phase) {
    return foliar(weed, phase, Optional.empty());
  }

  /** The same with a site that does nothing to plants. */
  public FoliarTable foliar(int weed, Position.Phase phase, Optional<Site> without) {
    boolean inTank =
        without.isPresent()
            && actives.stream().anyMatch(a -> a.ingredient().site().equals(without.get()));
    Key key = new Key(phase, weed, inTank ? without.get().number() : -1);
    return tables.computeIfAbsent(
        key,
        k ->
            FoliarTable.of(
                effects.traces().weeds().get(weed),
                actives,
                interactions,
                plain(weed, phase),
                inTank ? without : Optional.empty()));
  }

  private List<double[]> plain(int weed, Position.Phase phase) {
    return actives.stream()
        .map(a -> effects.foliar(a, weed, phase).orElseGet(() -> new double[HeightClasses.COUNT]))
        .toList();
  }

  /** What an active does in the soil when sprayed on a day of a year (its place in the set). */
  public SoilEffect soil(int active, int year, int day, int weed) {
    return effects.soil(actives.get(active), year, day, weed);
  }

  /** The course of an active in the soil; empty for one without soil activity. */
  public Optional<ResidualCurve> residual(int active, int year, int day) {
    return effects.residual(actives.get(active), year, day);
  }
}
