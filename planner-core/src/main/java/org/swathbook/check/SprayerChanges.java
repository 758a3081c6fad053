package org.swathbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.swathbook.catalog.DropletClass;
import org.swathbook.measure.Numbers;
import org.swathbook.program.Mix;
import org.swathbook.program.SprayJob;
import org.swathbook.rules.ActiveUse;
import org.swathbook.tank.TankNeeds;

/** Other spray volumes and droplet classes for a tank. */
final class SprayerChanges {
  /** Spray volumes that are tried where no label names one (common practice, no source). */
  private static final double[] VOLUMES = {10, 15, 20};

  private final SprayJob job;
  private final List<ActiveUse> actives;

  SprayerChanges(JudgedMix judged) {
    this.job = judged.job();
    this.actives = judged.facts().actives();
  }

  /** The volume that the labels ask for, and some that are common. */
  List<MixChange> volumes() {
    List<MixChange> out = new ArrayList<>();
    TreeSet<Double> volumes = new TreeSet<>();
    TankNeeds.of(actives.stream().map(ActiveUse::partner).toList())
        .gallonsPerAcre()
        .ifPresent(volumes::add);
    for (double v : VOLUMES) {
      volumes.add(v);
    }
    double now = job.mix().gallonsPerAcre().orElse(0);
    for (double v : volumes) {
      if (v != now) {
        Mix mix = new Mix(job.mix().doses(), job.mix().adjuvants(), OptionalDouble.of(v));
        out.add(new MixChange("spray " + Numbers.decimals(v, 1) + " gal/acre", job.with(mix)));
      }
    }
    return out;
  }

  /** Every class but the one that is chosen, of those that all labels allow. */
  List<MixChange> droplets() {
    List<MixChange> out = new ArrayList<>();
    TankDroplets.of(actives)
        .allowed()
        .ifPresent(
            range -> {
              for (DropletClass c : DropletClass.values()) {
                if (range.allows(c) && !job.setup().droplets().equals(Optional.of(c))) {
                  out.add(
                      new MixChange(
                          "spray " + c + " droplets", job.with(job.setup().with(Optional.of(c)))));
                }
              }
            });
    return out;
  }
}
