package org.swathbook.plan.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.swathbook.book.Book;
import org.swathbook.check.UseJudge;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Mix;
import org.swathbook.rules.ActiveUse;
import org.swathbook.tank.Partner;
import org.swathbook.tank.TankNeeds;

/** A mix that holds what its partners ask for besides themselves. */
public final class FilledMix {
  private FilledMix() {}

  /** A mix with the adjuvants and the volume that its partners ask for beside those it has. */
  public static Mix of(Book book, TraceSet traces, PassTiming timing, Mix mix) {
    List<Partner> partners =
        UseJudge.facts(book, traces, 0, timing, mix).stream()
            .map(f -> new ActiveUse(f.dose(), f.active(), UseJudge.choose(f)).partner())
            .toList();
    TankNeeds needs = TankNeeds.of(partners);
    List<Adjuvant> adjuvants = new ArrayList<>(mix.adjuvants());
    for (Adjuvant a : needs.adjuvants()) {
      if (mix.adjuvants().stream().noneMatch(held -> held.kind().equals(a.kind()))) {
        adjuvants.add(a);
      }
    }
    OptionalDouble gallons =
        DoubleStream.concat(mix.gallonsPerAcre().stream(), needs.gallonsPerAcre().stream()).max();
    return new Mix(mix.doses(), adjuvants, gallons);
  }
}
