package org.swathbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Mix;
import org.swathbook.program.SprayJob;
import org.swathbook.rules.ActiveUse;
import org.swathbook.tank.Partner;
import org.swathbook.tank.WaterConditioner;

/** The single changes of a tank and of a sprayer that may mend it; crop, weeds and day stay. */
final class MixChanges {
  private final JudgedMix judged;
  private final AgainstTank against;

  MixChanges(JudgedMix judged) {
    this.judged = judged;
    this.against = AgainstTank.of(judged);
  }

  /**
   * Other rates, fewer products, other adjuvants, volume, droplets: what may clear something that
   * stands against the tank.
   */
  List<MixChange> ofWhatIsThere() {
    List<MixChange> out = new ArrayList<>(new DoseChanges(against).all());
    fitted().ifPresent(out::add);
    if (against.stands("water-quality")) {
      conditioned().ifPresent(out::add);
    }
    SprayerChanges sprayer = new SprayerChanges(judged);
    if (against.stands("carrier-volume")) {
      out.addAll(sprayer.volumes());
    }
    if (against.stands("droplet-class")) {
      out.addAll(sprayer.droplets());
    }
    return out;
  }

  /** One more product, at its highest rate that the label allows here. */
  List<MixChange> partners() {
    return new PartnerChanges(against).all();
  }

  private Optional<MixChange> fitted() {
    SprayJob job = judged.job();
    Mix fitted = FittedAdjuvants.of(job.mix(), judged.facts().actives());
    String words = FittedAdjuvants.words(job.mix(), fitted);
    return words.isEmpty() ? Optional.empty() : Optional.of(new MixChange(words, job.with(fitted)));
  }

  /** With what takes the hardness out of the water. */
  private Optional<MixChange> conditioned() {
    SprayJob job = judged.job();
    List<Partner> partners = judged.facts().actives().stream().map(ActiveUse::partner).toList();
    Optional<Adjuvant> conditioner = WaterConditioner.of(job.carrier(), partners);
    if (conditioner.isEmpty() || job.mix().adjuvants().contains(conditioner.get())) {
      return Optional.empty();
    }
    List<Adjuvant> adjuvants = new ArrayList<>(job.mix().adjuvants());
    adjuvants.removeIf(a -> a.kind().equals(conditioner.get().kind()));
    adjuvants.add(conditioner.get());
    Mix mix = new Mix(job.mix().doses(), adjuvants, job.mix().gallonsPerAcre());
    return Optional.of(new MixChange(FittedAdjuvants.words(job.mix(), mix), job.with(mix)));
  }
}
