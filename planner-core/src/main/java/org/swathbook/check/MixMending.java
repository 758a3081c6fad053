package org.swathbook.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.book.Prices;
import org.swathbook.catalog.ProductId;
import org.swathbook.measure.Money;
import org.swathbook.program.Mix;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;

/**
 * Looks for changes of a tank after which less stands against it. Each step takes the change that
 * leaves the fewest blocks, then the most of the sites that worked on driver weeds, then the fewest
 * warnings. A product is left out only to clear a block that is not of the day, and is changed once
 * at most. No tank is offered that has fewer effective sites on a driver weed that stands. Every
 * mended tank was judged by all rules.
 */
public final class MixMending {
  private static final int MOST_CHANGES = 6;

  /** Findings that a partner of another site may clear. */
  private static final Set<String> WANT_A_PARTNER =
      Set.of("single-site", "resistant-biotype", "weed-too-tall", "antagonism", "partner-refused");

  private final MixJudge judge;
  private final Prices prices;
  private final JudgedMix broken;
  private final DriverSites sites;
  private final Set<ProductId> changed = new HashSet<>();

  private MixMending(MixJudge judge, JudgedMix broken) {
    this.judge = judge;
    this.prices = broken.facts().book().prices();
    this.broken = broken;
    this.sites = DriverSites.of(broken.facts());
  }

  /** Empty when no change found makes it better and works as well. */
  public static Optional<MendedMix> of(MixJudge judge, JudgedMix broken) {
    return new MixMending(judge, broken).mend();
  }

  private Optional<MendedMix> mend() {
    JudgedMix now = broken;
    List<String> changes = new ArrayList<>();
    Optional<MendedMix> out = Optional.empty();
    while (changes.size() < MOST_CHANGES && stands(now)) {
      Optional<Tried> best = best(now);
      if (best.isEmpty()) {
        break;
      }
      JudgedMix then = judge.judge(best.get().change().job());
      if (!isBetter(then, now)) {
        break;
      }
      now = then;
      changes.add(best.get().change().words());
      best.get().change().product().ifPresent(changed::add);
      // A product that is left out may be made good by a later change, or never.
      if (lacked(now) == 0) {
        out = Optional.of(new MendedMix(now, changes));
      }
    }
    return out;
  }

  private int lacked(JudgedMix then) {
    return sites.lackedBy(DriverSites.of(then.facts()));
  }

  /** Word for word, and not at a glance alone. */
  private static boolean isBetter(JudgedMix then, JudgedMix now) {
    long blocks = count(then, Severity.BLOCK) - count(now, Severity.BLOCK);
    return blocks < 0 || blocks == 0 && count(then, Severity.WARN) < count(now, Severity.WARN);
  }

  private static boolean stands(JudgedMix judged) {
    return count(judged, Severity.BLOCK) + count(judged, Severity.WARN) > 0;
  }

  private static long count(JudgedMix judged, Severity severity) {
    return judged.judgement().findings().stream().filter(f -> f.severity() == severity).count();
  }

  /**
   * What is left after a change: by blocks, then by sites that it lacks, then by warnings, then
   * what drops no product, then by asks, then by cost.
   *
   * @param cents per acre; what has no price comes last
   */
  private record Tried(MixChange change, long blocks, int lacked, long warns, long asks, long cents)
      implements Comparable<Tried> {
    @Override
    public int compareTo(Tried o) {
      int c = Long.compare(blocks, o.blocks);
      c = c != 0 ? c : Integer.compare(lacked, o.lacked);
      c = c != 0 ? c : Long.compare(warns, o.warns);
      c = c != 0 ? c : Boolean.compare(change.drops(), o.change.drops());
      c = c != 0 ? c : Long.compare(asks, o.asks);
      c = c != 0 ? c : Long.compare(cents, o.cents);
      return c != 0 ? c : change.words().compareTo(o.change.words());
    }
  }

  private Optional<Tried> best(JudgedMix now) {
    MixChanges changes = new MixChanges(now);
    List<MixChange> all = new ArrayList<>(changes.ofWhatIsThere());
    if (now.judgement().findings().stream().anyMatch(MixMending::wantsAPartner)) {
      // Two uses of one label may come to the same tank, which then has the same words.
      Set<String> said = new HashSet<>();
      all.forEach(c -> said.add(c.words()));
      changes.partners().stream().filter(c -> said.add(c.words())).forEach(all::add);
    }
    all.removeIf(c -> c.product().filter(changed::contains).isPresent());
    MixGlance glance = new MixGlance(judge, now);
    int lacked = lacked(now);
    // Judged side by side: each by itself, and the best of them is the same in any order.
    return all.parallelStream()
        .flatMap(change -> tried(change, glance).stream())
        .filter(t -> t.lacked <= lacked || t.blocks < count(now, Severity.BLOCK))
        .reduce((a, b) -> a.compareTo(b) <= 0 ? a : b);
  }

  /** Empty for what cannot be taken: it is no better, or drops a product and not a block. */
  private Optional<Tried> tried(MixChange change, MixGlance glance) {
    return glance
        .less(change.job(), change.drops())
        .map(
            judged ->
                new Tried(
                    change,
                    count(judged, Severity.BLOCK),
                    lacked(judged),
                    count(judged, Severity.WARN),
                    judged.judgement().asks().size(),
                    cents(change.job().mix())));
  }

  private static boolean wantsAPartner(Finding f) {
    return f.severity() != Severity.NOTE && WANT_A_PARTNER.contains(f.rule().value());
  }

  private long cents(Mix mix) {
    return prices.perAcre(mix).map(Money::cents).orElse(Long.MAX_VALUE);
  }
}
